using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Rendering;

namespace Lidoff.Seeing.Tests.Rendering.Invented;

/// <summary>
/// Looks at a rendered picture's pixels as a patient person with a template would: the places come from the part's plan, what stands
/// there only from the pixels.
/// </summary>
internal sealed class PictureReader
{
    private readonly RenderedScene rendered;
    private readonly SceneCamera camera;

    public PictureReader(Scene scene) => (rendered, camera) = (SceneRenderer.Render(scene), new(scene));

    private Scene Scene => rendered.Scene;

    /// <summary>How many bright runs stand along each side of a part that has leads, from its first side clockwise.</summary>
    public IEnumerable<int> Leads(ScenePart part)
    {
        var (a, b, out1) = (part.LengthMm / 2, part.WidthMm / 2, part.LeadMm * 0.65);
        var ends = part.LeadSides == 4 || part.EndLeads > 0;
        yield return Runs(part, along => (along, -b - out1), a);
        if (ends) yield return Runs(part, along => (a + out1, along), b);
        yield return Runs(part, along => (along, b + out1), a);
        if (ends) yield return Runs(part, along => (-a - out1, along), b);
    }

    /// <summary>What is read at each place of a part's mark: the letter whose strokes go best with the pixels there, '?' where none goes well.</summary>
    public IEnumerable<string> Mark(ScenePart part)
    {
        // The print's plan: 84 % of the length or 62 % of the width, a line every 1.5 cap heights, letters one cap height apart.
        var letters = part.Marks.Max(line => line.Length);
        var cap = Math.Min(0.84 * part.LengthMm / letters, 0.62 * part.WidthMm / (part.Marks.Count * 1.5));
        for (var line = 0; line < part.Marks.Count; line++)
        {
            var length = part.Marks[line].Length;
            var v = (line - (part.Marks.Count / 2.0)) * 1.5 + 0.25;
            yield return string.Concat(Enumerable.Range(0, length).Select(i => Letter(part, cap, i - (length / 2.0) + (1 / 6.0), v)));
        }
    }

    private char Letter(ScenePart part, double cap, double left, double top)
    {
        const double step = 0.05;
        var places = (from y in Enumerable.Range(0, 27) from x in Enumerable.Range(0, 20) select ((x * step) - 0.15, (y * step) - 0.15)).ToList();
        var seen = places.Select(at => Bright(part, (left + at.Item1) * cap, (top + at.Item2) * cap, part.HeightMm)).ToList();
        var (dx, dy) = Scene.Light switch { Lighting.RakingLeft => (0.05, 0.0), Lighting.RakingTop => (0.0, 0.05), _ => (0.0, 0.0) };
        var best = StrokeFont.Drawn.Keys.Where(letter => letter != ' ').Select(letter => (letter, R: Alike(seen, [.. places.Select(at => Strokes(letter, at))]))).MaxBy(each => each.R);
        return best.R >= 0.4 ? best.letter : '?';

        // Under flat light the strokes themselves; under a low one the edge that faces it bright and the other one dark.
        double Strokes(char letter, (double X, double Y) at) => dx == 0 && dy == 0 ? Pen(letter, at.X, at.Y) : Pen(letter, at.X - dx, at.Y - dy) - Pen(letter, at.X + dx, at.Y + dy);

        double Pen(char letter, double x, double y) => Math.Clamp(0.5 + ((0.075 - StrokeFont.Distance(letter.ToString(), x, y, 0.4)) * cap * Scene.PxPerMm), 0, 1);
    }

    /// <summary>Pearson's correlation.</summary>
    private static double Alike(List<double> one, List<double> other)
    {
        var (m, n) = (one.Average(), other.Average());
        var (xy, xx, yy) = (0.0, 0.0, 0.0);
        for (var i = 0; i < one.Count; i++)
        {
            var (x, y) = (one[i] - m, other[i] - n);
            (xy, xx, yy) = (xy + (x * y), xx + (x * x), yy + (y * y));
        }

        return xx * yy > 0 ? xy / Math.Sqrt(xx * yy) : 0;
    }

    private int Runs(ScenePart part, Func<double, (double U, double V)> at, double half)
    {
        var row = new List<double>();
        for (var along = -half - 0.1; along <= half + 0.1; along += 0.25 / Scene.PxPerMm)
        {
            var (u, v) = at(along);
            row.Add(Bright(part, u, v, 0));
        }

        // Metal is brighter than halfway between the darkest and the brightest of the row.
        var half255 = (row.Min() + row.Max()) / 2;
        return row.Zip(row.Skip(1)).Count(pair => pair.First < half255 && pair.Second >= half255) + (row[0] >= half255 ? 1 : 0);
    }

    private double Bright(ScenePart part, double u, double v, double height)
    {
        var turn = part.TurnDegrees * Math.PI / 180;
        PicturePoint at = camera.Show(part.X + (u * Math.Cos(turn)) - (v * Math.Sin(turn)), part.Y + (u * Math.Sin(turn)) + (v * Math.Cos(turn)), height);
        // Between the four pixels around it.
        var (x, y) = (Math.Clamp(at.X - 0.5, 0, Scene.Width - 1.001), Math.Clamp(at.Y - 0.5, 0, Scene.Height - 1.001));
        var (i, j) = ((int)x, (int)y);
        var (fx, fy) = (x - i, y - j);
        return (Grey(i, j) * (1 - fx) * (1 - fy)) + (Grey(i + 1, j) * fx * (1 - fy)) + (Grey(i, j + 1) * (1 - fx) * fy) + (Grey(i + 1, j + 1) * fx * fy);
    }

    private double Grey(int x, int y)
    {
        var at = ((y * Scene.Width) + x) * 3;
        return (rendered.Pixels[at] + rendered.Pixels[at + 1] + rendered.Pixels[at + 2]) / 3.0;
    }
}
