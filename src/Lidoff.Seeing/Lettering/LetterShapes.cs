using System.Text;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Rendering;

namespace Lidoff.Seeing.Lettering;

/// <summary>
/// Words as strokes, so that a labelled picture looks the same on every machine whatever fonts it has. Capitals and digits are the
/// renderer's (<see cref="StrokeFont"/>); small letters, signs and accents are drawn here on the same grid of 4 × 6, descenders reaching
/// to 8. Distances are in cap heights: tops of capitals at 0, the base line at 1.
/// </summary>
public static class LetterShapes
{
    /// <summary>Between two letters, in cap heights.</summary>
    public const double Gap = 0.3;

    /// <summary>Lowest point of a descender, in cap heights.</summary>
    public const double Descent = 8 / 6.0;

    // A space and the box for a letter that is not drawn here are as wide as a narrow letter.
    private const double SpaceWidth = 0.3;
    private const string Unknown = "00 40 46 06 00";

    private static readonly Dictionary<Rune, (double Width, LetterStroke[] Strokes)> Shapes = Make();
    private static readonly (double Width, LetterStroke[] Strokes) Box = Shape(Unknown);

    /// <summary>True when every letter has a shape; others are drawn as a box.</summary>
    public static bool Knows(string text) => text.EnumerateRunes().All(Shapes.ContainsKey);

    /// <summary>Width of a line of text, in cap heights.</summary>
    public static double Width(string text)
    {
        var width = 0.0;
        foreach (var letter in text.EnumerateRunes()) width += Shapes.GetValueOrDefault(letter, Box).Width + Gap;
        return Math.Max(0, width - Gap);
    }

    /// <summary>
    /// The strokes of a line of text whose first capital has its top left corner at (x, y), <paramref name="size"/> px high.
    /// </summary>
    public static IReadOnlyList<LetterStroke> Line(string text, double x, double y, double size)
    {
        Guard.Positive(size);
        var strokes = new List<LetterStroke>();
        foreach (var letter in text.EnumerateRunes())
        {
            var (width, shape) = Shapes.GetValueOrDefault(letter, Box);
            var left = x;
            strokes.AddRange(shape.Select(stroke => new LetterStroke([.. stroke.Points.Select(point => new PicturePoint(left + (point.X * size), y + (point.Y * size)))])));
            x += (width + Gap) * size;
        }

        return strokes;
    }

    private static Dictionary<Rune, (double Width, LetterStroke[] Strokes)> Make()
    {
        var drawn = new Dictionary<char, string>(StrokeFont.Drawn)
        {
            ['a'] = "46 43 32 12|44 14 05 16 36 45", ['b'] = "00 06|03 12 32 43 45 36 16 05", ['c'] = "43 32 12 03 05 16 36 45", ['d'] = "40 46|43 32 12 03 05 16 36 45",
            ['e'] = "04 44 43 32 12 03 05 16 36 45", ['f'] = "30 20 11 16|02 22", ['g'] = "42 47 38 18 07|43 32 12 03 05 16 36 45", ['h'] = "00 06|03 12 32 43 46",
            ['i'] = "02 06|00 00", ['j'] = "12 17 08|10 10", ['k'] = "00 06|32 04|14 36", ['l'] = "00 05 16", ['m'] = "02 06|03 12 23 26|23 32 43 46", ['n'] = "02 06|03 12 32 43 46",
            ['o'] = "12 32 43 45 36 16 05 03 12", ['p'] = "02 08|03 12 32 43 45 36 16 05", ['q'] = "42 48|43 32 12 03 05 16 36 45", ['r'] = "02 06|04 22 32",
            ['s'] = "43 32 12 03 14 34 45 36 16 05", ['t'] = "10 15 26 36|02 32", ['u'] = "02 05 16 36 45|42 46", ['v'] = "02 26 42", ['w'] = "02 16 23 36 42",
            ['x'] = "02 46|42 06", ['y'] = "02 05 16 36 45|42 47 38 18", ['z'] = "02 42 06 46", ['ı'] = "02 06", ['ß'] = "06 01 10 20 31 22 33 35 26 16",
            ['ø'] = "12 32 43 45 36 16 05 03 12|06 42", ['Ø'] = "10 30 41 45 36 16 05 01 10|06 40",
            [','] = "15 16 07", [';'] = "13 13|15 16 07", ['!'] = "00 04|06 06", ['?'] = "01 10 30 41 42 23 24|26 26", ['('] = "20 11 15 26", [')'] = "00 11 15 06",
            ['['] = "20 00 06 26", [']'] = "00 20 26 06", ['{'] = "20 11 12 03 14 15 26", ['}'] = "00 11 12 23 14 15 06", ['|'] = "00 08", ['\\'] = "00 46",
            ['%'] = "40 06|00 10 11 01 00|35 45 46 36 35", ['&'] = "45 36 16 05 04 31 30 20 11 12 46", ['*'] = "12 34|14 32|21 25", ['='] = "02 42|04 44", ['<'] = "41 03 45",
            ['>'] = "01 43 05", ['"'] = "00 02|20 22", ['\''] = "00 02", ['#'] = "11 15|31 35|02 42|04 44", ['_'] = "07 47", ['@'] = "45 36 16 05 01 10 30 41 44 33 23 22 32 43",
            ['~'] = "04 13 24 33", ['^'] = "02 20 42", ['`'] = "00 11", ['$'] = "41 30 10 01 02 13 33 44 45 36 16 05|20 27", ['€'] = "45 36 26 15 11 20 30 41|02 32|04 34",
            ['±'] = "02 42|20 24|06 46", ['×'] = "02 46|42 06", ['µ'] = "02 08|05 16 36 45|42 46", ['μ'] = "02 08|05 16 36 45|42 46", ['Ω'] = "06 16 14 03 01 10 30 41 43 34 36 46",
            ['°'] = "00 20 22 02 00", ['–'] = "03 43", ['—'] = "03 43", ['…'] = "06 06|26 26|46 46", ['·'] = "03 03", ['•'] = "03 03", ['→'] = "03 43|31 43 35",
            ['“'] = "00 02|20 22", ['”'] = "00 02|20 22", ['„'] = "06 07|26 27", ['‘'] = "00 02", ['’'] = "00 02", ['©'] = "10 30 41 45 36 16 05 01 10|32 22 13 14 24 34",
        };
        var shapes = drawn.Where(each => each.Key != ' ').ToDictionary(each => new Rune(each.Key), each => Shape(each.Value));
        shapes[new(' ')] = (SpaceWidth, []);
        foreach (var accented in Accented.Split(' ')) shapes[new(accented[0])] = With(shapes[new(accented[1])], accented[2], char.IsUpper(accented[1]));
        return shapes;
    }

    // A letter, the letter under it, and the mark above or below.
    private const string Accented =
        "àa` áa´ âa^ ãa~ äa¨ åa° çc¸ èe` ée´ êe^ ëe¨ ìı` íı´ îı^ ïı¨ ñn~ òo` óo´ ôo^ õo~ öo¨ ùu` úu´ ûu^ üu¨ ýy´ ÿy¨ čcˇ ďdˇ ěeˇ ňnˇ řrˇ šsˇ žzˇ ůu° ćc´ ńn´ śs´ źz´ ąa¸ ęe¸ żz° "
        + "ÀA` ÁA´ ÂA^ ÃA~ ÄA¨ ÅA° ÇC¸ ÈE` ÉE´ ÊE^ ËE¨ ÌI` ÍI´ ÎI^ ÏI¨ ÑN~ ÒO` ÓO´ ÔO^ ÕO~ ÖO¨ ÙU` ÚU´ ÛU^ ÜU¨ ÝY´ ČCˇ ŘRˇ ŠSˇ ŽZˇ";

    private static (double Width, LetterStroke[] Strokes) With((double Width, LetterStroke[] Strokes) letter, char mark, bool capital)
    {
        var drawn = Shape(mark switch
        {
            '`' => "00 11",
            '´' => "01 10",
            '^' => "01 10 21",
            'ˇ' => "00 11 20",
            '~' => "01 10 21 30",
            '¨' => "00 00|20 20",
            '°' => "00 10 11 01 00",
            _ => "06 17 08",
        });
        var across = Math.Max(0, (letter.Width - drawn.Width) / 2);
        // Capitals are as high as the grid: their marks stand two rows above it.
        var down = capital && mark != '¸' ? -2 / 6.0 : 0;
        return (letter.Width, [.. letter.Strokes, .. drawn.Strokes.Select(stroke => new LetterStroke([.. stroke.Points.Select(point => new PicturePoint(point.X + across, point.Y + down))]))]);
    }

    /// <summary>Strokes moved to begin at x = 0, and their width.</summary>
    private static (double Width, LetterStroke[] Strokes) Shape(string drawn)
    {
        var strokes = drawn.Split('|').Select(run => run.Split(' ').Select(point => (X: (point[0] - '0') / 6.0, Y: (point[1] - '0') / 6.0)).ToList()).ToList();
        var (left, right) = (strokes.Min(run => run.Min(point => point.X)), strokes.Max(run => run.Max(point => point.X)));
        return (right - left, [.. strokes.Select(run => new LetterStroke([.. (run.Count > 1 ? run : [run[0], run[0]]).Select(point => new PicturePoint(point.X - left, point.Y))]))]);
    }
}
