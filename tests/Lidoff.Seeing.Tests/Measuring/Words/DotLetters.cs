using Lidoff.Seeing.Measuring.Edges;

namespace Lidoff.Seeing.Tests.Measuring.Words;

/// <summary>
/// Capitals and digits of 5 × 7 dots, as lamp panels and matrix printers show them: drawn here, and not with the strokes that the program draws
/// and knows letters by.
/// </summary>
internal static class DotLetters
{
    private static readonly Dictionary<char, string> Dots = new()
    {
        ['B'] = "11110 10001 10001 11110 10001 10001 11110", ['C'] = "01110 10001 10000 10000 10000 10001 01110", ['E'] = "11111 10000 10000 11110 10000 10000 11111",
        ['F'] = "11111 10000 10000 11110 10000 10000 10000", ['G'] = "01110 10001 10000 10111 10001 10001 01110", ['J'] = "00111 00010 00010 00010 00010 10010 01100",
        ['K'] = "10001 10010 10100 11000 10100 10010 10001", ['L'] = "10000 10000 10000 10000 10000 10000 11111", ['N'] = "10001 11001 10101 10101 10011 10001 10001",
        ['P'] = "11110 10001 10001 11110 10000 10000 10000", ['R'] = "11110 10001 10001 11110 10100 10010 10001", ['S'] = "01111 10000 10000 01110 00001 00001 11110",
        ['2'] = "01110 10001 00001 00110 01000 10000 11111", ['3'] = "11110 00001 00001 01110 00001 00001 11110", ['4'] = "00010 00110 01010 10010 11111 00010 00010",
        ['5'] = "11111 10000 11110 00001 00001 10001 01110", ['6'] = "00110 01000 10000 11110 10001 10001 01110", ['7'] = "11111 00001 00010 00100 01000 01000 01000",
        ['9'] = "01110 10001 10001 01111 00001 00010 01100",
    };

    /// <summary>Prints a word in a light ink, its middle at a place, its letters along a direction.</summary>
    /// <param name="grey">The picture; changed.</param>
    /// <param name="word">The word.</param>
    /// <param name="x">Its middle, px.</param>
    /// <param name="y">Its middle, px.</param>
    /// <param name="turn">Where the word runs to, degrees from the right, downwards.</param>
    /// <param name="dot">Width of a dot, px.</param>
    public static void Print(GreyPicture grey, string word, double x, double y, double turn, double dot)
    {
        const int fine = 3;
        var (sin, cos) = (Math.Sin(turn * Math.PI / 180), Math.Cos(turn * Math.PI / 180));
        var reach = (int)(dot * ((4 * word.Length) + 6));
        for (var py = Math.Max(0, (int)y - reach); py < Math.Min(grey.Height, (int)y + reach); py++)
        {
            for (var px = Math.Max(0, (int)x - reach); px < Math.Min(grey.Width, (int)x + reach); px++)
            {
                var ink = 0;
                for (var k = 0; k < fine * fine; k++)
                {
                    var (dx, dy) = (px + ((k % fine + 0.5) / fine) - x, py + ((k / fine + 0.5) / fine) - y);
                    // Seven dots from letter to letter, five of them the letter.
                    var (u, v) = ((((dx * cos) + (dy * sin)) / dot) + (3.5 * word.Length) - 1, (((dy * cos) - (dx * sin)) / dot) + 3.5);
                    var (letter, column, row) = ((int)Math.Floor(u / 7), (int)Math.Floor(u - (7 * Math.Floor(u / 7))), (int)Math.Floor(v));
                    if (letter < 0 || letter >= word.Length || column > 4 || row is < 0 or > 6) continue;
                    if (Dots[word[letter]].Split(' ')[row][column] == '1') ink++;
                }

                var at = (py * grey.Width) + px;
                grey.Values[at] += (205 - grey.Values[at]) * ink / (fine * fine);
            }
        }
    }
}
