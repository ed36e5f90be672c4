using System.Globalization;
using System.Text.Json;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Reading.Finding;

namespace Lidoff.Benchmarks;

/// <summary>What stands on one picture of a set of marks.</summary>
/// <param name="Image">Name of the file.</param>
/// <param name="TurnDeg">Clockwise turn that makes it upright, degrees.</param>
/// <param name="Upright">True where it is taken as upright.</param>
/// <param name="Hard">What is hard in it.</param>
/// <param name="Number">Which line holds the product number.</param>
/// <param name="Lines">Texts in order, without blanks.</param>
/// <param name="Outlines">Their outlines; none where nobody drew them.</param>
/// <param name="Box">The part of the picture that is looked at; null for all of it.</param>
internal sealed record MarkTruth(
    string Image, double TurnDeg, bool Upright, string Hard, int Number, IReadOnlyList<string> Lines, IReadOnlyList<PictureRegion> Outlines, PictureRegion? Box = null)
{
    /// <summary>
    /// Reads a table of crops of one's own pictures: <c>picture,x,y,w,h,turn_clockwise_deg,text_lines,note</c>, <c>|</c> between lines, the pictures beside it.
    /// The turn is the text's, clockwise as it lies; the longest line stands for the product number.
    /// </summary>
    public static IReadOnlyList<MarkTruth> OfTable(string path) => [.. File.ReadLines(path).Skip(1).Where(row => row.Length > 0).Select(OfRow)];

    private static MarkTruth OfRow(string row)
    {
        var cells = row.Split(',');
        double Number(int k) => double.Parse(cells[k], CultureInfo.InvariantCulture);
        string[] lines = [.. cells[6].Split('|').Select(line => line.Replace(" ", "", StringComparison.Ordinal).ToUpperInvariant())];
        var turn = Number(5);
        return new(cells[0], turn, turn == 0, "", Array.IndexOf(lines, lines.MaxBy(line => line.Length)), lines, [], PictureRegion.Box(Number(1), Number(2), Number(3), Number(4)));
    }

    /// <summary>Reads <c>truth.jsonl</c> of a folder.</summary>
    public static IReadOnlyList<MarkTruth> Of(string folder) => [.. File.ReadLines(Path.Combine(folder, "truth.jsonl")).Select(Of1)];

    private static MarkTruth Of1(string line)
    {
        using var json = JsonDocument.Parse(line);
        var root = json.RootElement;
        var lines = root.GetProperty("lines").EnumerateArray().ToList();
        return new(
            root.GetProperty("image").GetString()!,
            root.GetProperty("turn_deg").GetDouble(),
            root.GetProperty("upright").GetBoolean(),
            root.GetProperty("hard").GetString()!,
            root.GetProperty("number").GetInt32(),
            [.. lines.Select(each => each.GetProperty("text").GetString()!)],
            [.. lines.Select(each => Region([.. each.GetProperty("outline").EnumerateArray().Select(c => (c[0].GetDouble(), c[1].GetDouble()))]))]);
    }

    private static PictureRegion Region((double X, double Y)[] corners)
    {
        var ((ax, ay), (bx, by), (cx, cy)) = (corners[0], corners[1], corners[2]);
        return new(new((ax + cx) / 2, (ay + cy) / 2), Math.Sqrt(((bx - ax) * (bx - ax)) + ((by - ay) * (by - ay))), Math.Sqrt(((cx - bx) * (cx - bx)) + ((cy - by) * (cy - by))), Math.Atan2(by - ay, bx - ax));
    }
}
