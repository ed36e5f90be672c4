using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Reading.Finding;

namespace Lidoff.Seeing.Reading.Spots;

/// <summary>Tells the lines of one mark, which stand together, from those strewn over a board.</summary>
internal static class TextBlock
{
    // In heights of a line: lines of a mark stand closer than that, and a click on the body falls that near to them. Choices of ours.
    private const double Apart = 2.5;
    private const double Beside = 3;

    // In heights of a line, of text that is meant without its body being seen: lines closer than that are one mark, and a click that near is on it.
    // Choices of ours.
    private const double Together = 1.2;
    private const double Touching = 0.5;

    // A mark on a body that fills the picture takes up that much of its longer side at least. A choice of ours.
    private const double LeastShare = 0.25;

    /// <summary>True where the lines hang together, lie around a place, and take up a fair part of the picture.</summary>
    public static bool IsOne(IReadOnlyList<PictureRegion> lines, PicturePoint at, PictureRegion whole)
    {
        Guard.That(lines.Count > 0, "one line at least");
        var height = lines.Select(line => line.Height).Order().ElementAt(lines.Count / 2);
        var reached = new HashSet<int> { 0 };
        for (var before = 0; before < reached.Count;)
        {
            before = reached.Count;
            reached.UnionWith(Enumerable.Range(0, lines.Count).Where(i => reached.Any(j => Gap(lines[i], lines[j]) <= Apart * height)).ToList());
        }

        var corners = lines.SelectMany(line => line.Corners).ToList();
        var (left, right, top, foot) = (corners.Min(c => c.X), corners.Max(c => c.X), corners.Min(c => c.Y), corners.Max(c => c.Y));
        var near = Beside * height;
        return reached.Count == lines.Count && at.X >= left - near && at.X <= right + near && at.Y >= top - near && at.Y <= foot + near
            && Math.Max(right - left, foot - top) >= LeastShare * Math.Max(whole.Width, whole.Height);
    }

    /// <summary>
    /// The rectangle around the lines that hang together under a place, along the longest of them, and the height of a line; null where none lies
    /// there: who points beside a text does not mean it.
    /// </summary>
    public static (PictureRegion Around, double Height)? Under(IReadOnlyList<PictureRegion> lines, PicturePoint at)
    {
        foreach (var (around, height, _) in All(lines)) if (around.Grown(Touching * height).Holds(at)) return (around, height);
        return null;
    }

    /// <summary>Lines that hang together: the rectangle around them, along the longest, the height of a line, and how many they are.</summary>
    /// <param name="lines">The lines.</param>
    /// <param name="together">How far apart they may stand, in heights of the lower.</param>
    public static IEnumerable<(PictureRegion Around, double Height, int Lines)> All(IReadOnlyList<PictureRegion> lines, double together = Together)
    {
        var left = lines.ToList();
        while (left.Count > 0)
        {
            var block = new List<PictureRegion> { left[0] };
            left.RemoveAt(0);
            for (var before = 0; before < block.Count;)
            {
                before = block.Count;
                var near = left.Where(line => block.Any(other => Gap(line, other) <= together * Math.Min(line.Height, other.Height))).ToList();
                block.AddRange(near);
                left.RemoveAll(near.Contains);
            }

            yield return Around(block);
        }
    }

    /// <summary>The same of lines that are one mark, one at least.</summary>
    public static (PictureRegion Around, double Height, int Lines) Around(IReadOnlyList<PictureRegion> lines) =>
        (Hull(lines), lines.Select(line => line.Height).Order().ElementAt(lines.Count / 2), lines.Count);

    private static PictureRegion Hull(IReadOnlyList<PictureRegion> block)
    {
        var frame = new PictureRegion(default, 1, 1, block.MaxBy(line => line.Width).Turn);
        var inside = block.SelectMany(line => line.Corners).Select(frame.Inside).ToList();
        var (left, right, top, foot) = (inside.Min(p => p.X), inside.Max(p => p.X), inside.Min(p => p.Y), inside.Max(p => p.Y));
        return new(frame.At((left + right) / 2, (top + foot) / 2), right - left, foot - top, frame.Turn);
    }

    // Px between the upright boxes around two lines.
    private static double Gap(PictureRegion a, PictureRegion b)
    {
        var (p, q) = (a.Corners, b.Corners);
        var x = Math.Max(0, Math.Max(p.Min(c => c.X) - q.Max(c => c.X), q.Min(c => c.X) - p.Max(c => c.X)));
        var y = Math.Max(0, Math.Max(p.Min(c => c.Y) - q.Max(c => c.Y), q.Min(c => c.Y) - p.Max(c => c.Y)));
        return Math.Max(x, y);
    }
}
