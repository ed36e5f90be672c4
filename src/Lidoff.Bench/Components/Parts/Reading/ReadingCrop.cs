using System.Globalization;
using Lidoff.Bench.Serving;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Reading.Finding;

namespace Lidoff.Bench.Components.Parts.Reading;

/// <summary>What was read in one picture, cut out upright, with the found lines over it.</summary>
/// <param name="Sha256">Hash of the picture.</param>
/// <param name="Name">Its name; hostile text.</param>
/// <param name="Region">What is cut out, its width along the text.</param>
/// <param name="Lines">Corners of each line found in it, px of the piece, and which line of the mark it is, from 1.</param>
/// <param name="Dot">The pin-1 dot, px of the piece; null where none was seen in it.</param>
public sealed record ReadingCrop(string Sha256, string Name, PictureRegion Region, ValueList<(int Line, ValueList<PicturePoint> Corners)> Lines, PicturePoint? Dot)
{
    // Around a line whose body is not known, in heights of it.
    private const double AroundALine = 1;

    /// <summary>Where the piece is served.</summary>
    public string Address => CropRoutes.Address(Sha256, Region);

    /// <summary>What an SVG takes as its view box.</summary>
    public string ViewBox => string.Create(CultureInfo.InvariantCulture, $"0 0 {Region.Width:0.#} {Region.Height:0.#}");

    /// <summary>Corners as an SVG polygon takes them.</summary>
    public static string Points(IEnumerable<PicturePoint> corners) => string.Join(' ', corners.Select(c => string.Create(CultureInfo.InvariantCulture, $"{c.X:0.#},{c.Y:0.#}")));

    /// <summary>The pieces of a reading: its first picture's body, and of every other picture what its lines take up.</summary>
    public static ValueList<ReadingCrop> Of(ReadingSighting reading, Func<string, string> nameOf) =>
        [.. Enumerable.Range(0, reading.Pictures.Count).Select(picture => Of(reading, picture, nameOf(reading.Pictures[picture]))).OfType<ReadingCrop>()];

    private static ReadingCrop? Of(ReadingSighting reading, int picture, string name)
    {
        var lines = reading.Lines.Select((line, i) => (Outline: line.OutlineIn(picture), Number: i + 1)).Where(each => each.Outline.Count == 4).ToList();
        if (picture > 0 && lines.Count == 0) return null;
        // Another picture lies at a turn of its own, which its longest line shows.
        var turn = picture == 0 ? -reading.TurnDeg * Math.PI / 180 : Direction(lines.MaxBy(each => each.Outline[0].DistanceTo(each.Outline[1])).Outline);
        var frame = new PictureRegion(default, 1, 1, turn);
        var margin = picture == 0 || lines.Count == 0 ? 0 : AroundALine * lines.Max(each => each.Outline[0].DistanceTo(each.Outline[3]));
        var inside = lines.SelectMany(each => each.Outline).Concat(picture == 0 ? reading.Region.Corners : []).Select(frame.Inside).ToList();
        var (left, right, top, foot) = (inside.Min(p => p.X) - margin, inside.Max(p => p.X) + margin, inside.Min(p => p.Y) - margin, inside.Max(p => p.Y) + margin);
        var region = new PictureRegion(frame.At((left + right) / 2, (top + foot) / 2), Math.Max(1, right - left), Math.Max(1, foot - top), turn);
        PicturePoint Within(PicturePoint point) => region.Inside(point) is var (x, y) ? new(x + (region.Width / 2), y + (region.Height / 2)) : default;
        return new(
            reading.Pictures[picture], name, region, [.. lines.Select(each => (each.Number, (ValueList<PicturePoint>)[.. each.Outline.Select(Within)]))],
            picture == 0 && reading.Dot is { } dot && region.Holds(dot) ? Within(dot) : null);
    }

    private static double Direction(ValueList<PicturePoint> outline) => Lidoff.Numbers.Elementary.Atan2(outline[1].Y - outline[0].Y, outline[1].X - outline[0].X);
}
