using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Reading.Lattices;

namespace Lidoff.Seeing.Reading.Engine;

/// <summary>
/// Puts together what was read in pieces: text on one base line is one line of a mark, however wide the gap in it (a lot code and its last
/// two digits). Each piece was read by itself, so a gap costs nothing.
/// </summary>
internal static class MarkRows
{
    // Pieces of one row: alike in height and direction, on one base line, nearer than so many heights. Choices of ours, set on real tops.
    private const double MostHeightRatio = 1.3;
    private const double MostTurn = 0.12;
    private const double MostOff = 0.35;
    private const double MostGap = 6;

    /// <summary>The lines with rows put together; their order stays that of each row's beginning.</summary>
    /// <param name="lines">Lines in reading order.</param>
    public static List<ReadLine> Of(IEnumerable<ReadLine> lines)
    {
        var rows = new List<ReadLine>();
        foreach (var line in lines)
        {
            if (rows.Count > 0 && Follows(rows[^1], line)) rows[^1] = Together(rows[^1], line);
            else rows.Add(line);
        }

        return rows;
    }

    /// <summary>True where the second piece stands behind the first on one row.</summary>
    public static bool Follows(ReadLine first, ReadLine second)
    {
        var (a, b) = (first.Region, second.Region);
        // Where pictures differ in which of both pieces they show, no one outline holds both.
        if (!first.Also.Select(each => each.Picture).Prepend(first.Picture).SequenceEqual(second.Also.Select(each => each.Picture).Prepend(second.Picture))) return false;
        var height = Math.Min(a.Height, b.Height);
        if (Angles.Between(a.Turn, b.Turn) > MostTurn || Math.Max(a.Height, b.Height) > MostHeightRatio * height) return false;
        // By the longer piece: a short one tells its own direction badly.
        var lead = a.Width >= b.Width ? a : b;
        var ((fx, fy), (sx, sy)) = (lead.Inside(a.Middle), lead.Inside(b.Middle));
        var gap = sx - fx - ((a.Width + b.Width) / 2);
        return Math.Abs(sy - fy) <= MostOff * height && gap >= -0.3 * height && gap <= MostGap * height;
    }

    private static ReadLine Together(ReadLine first, ReadLine second)
    {
        var whole = PictureRegion.InARow(first.Region, second.Region);
        var (until, from) = (first.Region.Width / whole.Width, 1 - (second.Region.Width / whole.Width));
        return new(LineReading.InARow(first.Reading, second.Reading, Math.Min(1, until), Math.Max(0, from)), whole, first.Picture)
        {
            Also = [.. first.Also.Zip(second.Also, (a, b) => (PictureRegion.InARow(a.Region, b.Region), a.Picture))],
        };
    }
}
