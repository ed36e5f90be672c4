using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Rendering;

/// <summary>
/// Letters as strokes on a grid of 4 × 6, drawn for this project: each stroke is a run of points "xy", x right and y down, strokes
/// parted by '|'. Distances are in cap heights.
/// </summary>
internal static class StrokeFont
{
    /// <summary>From one letter's start to the next, in cap heights.</summary>
    public const double Advance = 1.0;

    /// <summary>The letters as they are drawn.</summary>
    public static IReadOnlyDictionary<char, string> Drawn { get; } = new Dictionary<char, string>
    {
        ['A'] = "06 20 46|14 34", ['B'] = "00 06 36 45 44 33 03|00 30 41 42 33", ['C'] = "45 36 16 05 01 10 30 41", ['D'] = "00 06 26 44 42 20 00",
        ['E'] = "40 00 06 46|03 33", ['F'] = "40 00 06|03 33", ['G'] = "41 30 10 01 05 16 36 45 43 23", ['H'] = "00 06|40 46|03 43", ['I'] = "10 30|20 26|16 36",
        ['J'] = "40 45 36 16 05", ['K'] = "00 06|40 03 46", ['L'] = "00 06 46", ['M'] = "06 00 23 40 46", ['N'] = "06 00 46 40",
        ['O'] = "10 30 41 45 36 16 05 01 10", ['P'] = "06 00 30 41 42 33 03", ['Q'] = "10 30 41 45 36 16 05 01 10|24 46", ['R'] = "06 00 30 41 42 33 03|23 46",
        ['S'] = "41 30 10 01 02 13 33 44 45 36 16 05", ['T'] = "00 40|20 26", ['U'] = "00 05 16 36 45 40", ['V'] = "00 26 40", ['W'] = "00 16 23 36 40",
        ['X'] = "00 46|40 06", ['Y'] = "00 23 40|23 26", ['Z'] = "00 40 06 46",
        ['0'] = "20 31 35 26 15 11 20", ['1'] = "11 20 26|16 36", ['2'] = "01 10 30 41 42 06 46", ['3'] = "01 10 30 41 42 33 13|33 44 45 36 16 05", ['4'] = "36 30 04 44",
        ['5'] = "40 00 02 32 43 45 36 16 05", ['6'] = "30 10 01 05 16 36 45 44 33 13 04", ['7'] = "00 40 16", ['8'] = "13 33 42 41 30 10 01 02 13 04 05 16 36 45 44 33",
        ['9'] = "16 36 45 41 30 10 01 02 13 33 42", ['-'] = "03 43", ['.'] = "26 26", ['/'] = "06 40", [':'] = "22 22|25 25", ['+'] = "03 43|21 25", ['#'] = "10 06|40 36|02 42|04 44", [' '] = "",
    };

    private static readonly Dictionary<char, (double X1, double Y1, double X2, double Y2)[]> Letters = Parse(Drawn);

    /// <summary>True when every character can be drawn.</summary>
    public static bool Knows(string text) => text.All(Letters.ContainsKey);

    /// <summary>
    /// Distance from (x, y) to the nearest stroke of a line of text that begins at the origin, in cap heights; at most
    /// <paramref name="most"/>, so that far letters cost nothing.
    /// </summary>
    public static double Distance(string text, double x, double y, double most)
    {
        var best = most * most;
        var first = Math.Max(0, (int)Math.Floor((x - most - 1) / Advance));
        var last = Math.Min(text.Length - 1, (int)Math.Floor((x + most) / Advance));
        for (var i = first; i <= last; i++)
        {
            foreach (var (x1, y1, x2, y2) in Letters[text[i]]) best = Math.Min(best, SquareTo(x - (i * Advance), y, x1, y1, x2, y2));
        }

        return Math.Sqrt(best);
    }

    private static double SquareTo(double x, double y, double x1, double y1, double x2, double y2)
    {
        var (dx, dy) = (x2 - x1, y2 - y1);
        var length = (dx * dx) + (dy * dy);
        var along = length > 0 ? Math.Clamp((((x - x1) * dx) + ((y - y1) * dy)) / length, 0, 1) : 0;
        var (ex, ey) = (x - x1 - (along * dx), y - y1 - (along * dy));
        return (ex * ex) + (ey * ey);
    }

    private static Dictionary<char, (double, double, double, double)[]> Parse(IReadOnlyDictionary<char, string> drawn)
    {
        var letters = new Dictionary<char, (double, double, double, double)[]>();
        foreach (var (letter, strokes) in drawn)
        {
            var segments = new List<(double, double, double, double)>();
            foreach (var stroke in strokes.Split('|', StringSplitOptions.RemoveEmptyEntries))
            {
                var points = stroke.Split(' ').Select(point => ((point[0] - '0') / 6.0, (point[1] - '0') / 6.0)).ToList();
                for (var i = 1; i < points.Count; i++) segments.Add((points[i - 1].Item1, points[i - 1].Item2, points[i].Item1, points[i].Item2));
            }

            Guard.That(letter == ' ' || segments.Count > 0, "a letter with strokes");
            letters.Add(letter, [.. segments]);
        }

        return letters;
    }
}
