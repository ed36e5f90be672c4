using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Reading.Lattices;
using Lidoff.Seeing.Reading.Networks;
using Lidoff.Seeing.Tests.Reading.Finding;

namespace Lidoff.Seeing.Tests.Reading.Engine;

/// <summary>
/// Networks that know the truth of a scene in picture coordinates and answer as trained ones would: maps drawn where the lines are, and, for a
/// strip, the line whose picture it is, told by the code of grey levels that the scene is painted with. A strip upside down reads as noise.
/// </summary>
internal sealed class DrawnNetworks(params (PictureRegion Line, string Text)[] scene) : IReadingNetworks
{
    private static readonly ReadingAlphabet Marks = ReadingAlphabet.OfMarks;

    /// <summary>What the finder says of directions: 1 the truth, -1 always the opposite, 0 every other line the opposite.</summary>
    public int Directions { get; init; } = 1;

    /// <summary>What any line upside down reads; empty for noise.</summary>
    public string UpsideDown { get; init; } = "";

    /// <summary>How sure it is of each symbol of noise.</summary>
    public double Opinion { get; init; } = 0.6;

    public PicturePoint? Dot { get; init; }

    public PictureRegion? Body { get; init; }

    /// <summary>A mark that is no text: its middle and its side.</summary>
    public (PicturePoint At, double Side)? Emblem { get; init; }

    /// <summary>Longest side of a sheet on which it finds anything; letters that are blurs on larger ones.</summary>
    public int Finest { get; init; } = int.MaxValue;

    /// <summary>Longest side of a region in which it finds anything, px of the picture: with more around the mark something else draws its eye.</summary>
    public double Widest { get; init; } = double.PositiveInfinity;

    /// <summary>Sheets that were looked at.</summary>
    public List<FinderSheet> Looked { get; } = [];

    public int Scored { get; private set; }

    /// <summary>Share that goes to a look-alike of the true symbol, by place in the text; 0.04 where nothing is said.</summary>
    public IReadOnlyDictionary<int, (char Symbol, double P)> Doubts { get; init; } = new Dictionary<int, (char, double)>();

    public IReadOnlyList<Fault> Troubles { get; init; } = [];

    public IReadOnlyList<string> Hashes => [new('a', 64), new('b', 64)];

    public string Settings => "drawn";

    public double LineTemperature => 1;

    /// <summary>The scene as a picture: each line a wedge from dark at its beginning to bright at its end, at a level of its own, over mid grey.</summary>
    public GreyPyramid Paint(int width, int height)
    {
        var pixels = new float[width * height];
        Array.Fill(pixels, 0.5f);
        for (var i = 0; i < pixels.Length; i++)
        {
            var at = new PicturePoint((i % width) + 0.5, (i / width) + 0.5);
            for (var k = 0; k < scene.Length; k++)
            {
                if (!scene[k].Line.Holds(at)) continue;
                var (u, v) = scene[k].Line.Inside(at);
                // Upper rows carry the line's number in bands along it, lower rows the wedge.
                pixels[i] = v < 0 ? (int)(((u / scene[k].Line.Width) + 0.5) * Bits) is var bit && ((k + 1) >> bit & 1) == 1 ? 1 : 0 : (float)((u / scene[k].Line.Width) + 0.5);
            }
        }

        return new(pixels, width, height);
    }

    private const int Bits = 4;

    public FinderMaps Find(FinderSheet sheet)
    {
        Looked.Add(sheet);
        var maps = new DrawnMaps(sheet.Width / 4, sheet.Height / 4, (sheet.ValidWidth + 3) / 4, (sheet.ValidHeight + 3) / 4);
        var seen = Math.Max(sheet.ValidWidth, sheet.ValidHeight) <= Finest && Math.Max(sheet.Region.Width, sheet.Region.Height) <= Widest;
        for (var k = 0; k < scene.Length && seen; k++)
        {
            var line = OnSheet(sheet, scene[k].Line);
            var turn = Directions == 1 || (Directions == 0 && k % 2 == 0) ? 0 : 180;
            maps.Line(line.Middle.X, line.Middle.Y, line.Width, line.Height, (line.Turn * 180 / Math.PI) + turn);
        }

        if (Dot is { } dot && OnSheet(sheet, new(dot, 1, 1, 0)) is var place) maps.Dot(place.Middle.X, place.Middle.Y, Math.Max(5, 6 * place.Width));
        if (Emblem is { } emblem && OnSheet(sheet, new(emblem.At, emblem.Side, emblem.Side, 0)) is var square) maps.Logo(square.Middle.X, square.Middle.Y, square.Width);
        if (Body is { } body) maps.Body(OnSheet(sheet, body));
        return maps.Draw();
    }

    public FinderMaps Bodies(FinderSheet sheet) => Find(sheet);

    public IReadOnlyList<CtcLattice> Score(IReadOnlyList<LineStrip> strips) => [.. strips.Select(Score)];

    private static PictureRegion OnSheet(FinderSheet sheet, PictureRegion line)
    {
        var (x, y) = sheet.Region.Inside(line.Middle);
        return new(new((x / sheet.Step) + (sheet.ValidWidth / 2.0), (y / sheet.Step) + (sheet.ValidHeight / 2.0)), line.Width / sheet.Step, line.Height / sheet.Step, line.Turn - sheet.Region.Turn);
    }

    private CtcLattice Score(LineStrip strip)
    {
        Scored++;
        double Mean(double x0, double x1, double y0, double y1)
        {
            var (sum, count) = (0.0, 0);
            for (var y = (int)(y0 * LineStrip.Rows); y < y1 * LineStrip.Rows; y++)
            {
                for (var x = (int)(x0 * strip.ValidWidth); x < x1 * strip.ValidWidth; x++)
                {
                    sum += strip.Pixels[(y * strip.Width) + x];
                    count++;
                }
            }

            return sum / count;
        }

        var (dark, bright) = (Mean(0.03, 0.12, 0.65, 0.85), Mean(0.88, 0.97, 0.65, 0.85));
        var number = Enumerable.Range(0, Bits).Sum(bit => Mean((bit + 0.3) / Bits, (bit + 0.7) / Bits, 0.2, 0.4) > (dark + bright) / 2 ? 1 << bit : 0);
        var steps = strip.Width / 4;
        var rows = new double[steps * Marks.Classes];
        var text = bright - dark > 1 && number >= 1 && number <= scene.Length ? scene[number - 1].Text : null;
        // Upside down the wedge lies above and falls.
        if (text is null && UpsideDown.Length > 0 && Mean(0.03, 0.12, 0.15, 0.35) - Mean(0.88, 0.97, 0.15, 0.35) > 1) text = UpsideDown;
        for (var t = 0; t < steps; t++)
        {
            var row = rows.AsSpan(t * Marks.Classes, Marks.Classes);
            if (text is null)
            {
                // Noise: a weak opinion every sixth step.
                row.Fill((1 - Opinion) / Marks.Classes);
                row[t % 6 == 3 ? 1 + (t % 36) : 0] += Opinion;
                continue;
            }

            row.Fill(1e-5);
            // A symbol stands on one step in its middle.
            var at = Enumerable.Range(0, text.Length).Where(i => (int)((i + 0.5) / text.Length * strip.ValidWidth / 4) == t).DefaultIfEmpty(-1).First();
            if (at < 0)
            {
                row[0] = 1;
                continue;
            }

            var (symbol, share) = Doubts.GetValueOrDefault(at, ('+', 0.04));
            row[Marks.ClassesOf(text[at].ToString())![0]] = 1 - share;
            row[Marks.ClassesOf(symbol.ToString())![0]] = share;
        }

        for (var t = 0; t < steps; t++)
        {
            var row = rows.AsSpan(t * Marks.Classes, Marks.Classes);
            var sum = 0.0;
            foreach (var p in row) sum += p;
            foreach (ref var p in row) p /= sum;
        }

        return CtcLattice.OfScores([.. rows.Select(p => (float)Math.Log(p))], Marks, 1, (double)strip.ValidWidth / strip.Width);
    }
}
