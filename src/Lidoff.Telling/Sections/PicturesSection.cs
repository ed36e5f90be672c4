using System.Globalization;
using Lidoff.Evidence.Folding;
using Lidoff.Seeing.Kinds;
using Lidoff.Telling.Claims;
using Lidoff.Telling.Documents;
using Lidoff.Telling.Drawing;
using Lidoff.Telling.Reporting;

namespace Lidoff.Telling.Sections;

/// <summary>Each picture with what was done in it: known lengths, measured lengths, spots on leader lines, a scale bar.</summary>
public sealed class PicturesSection : IReportSection
{
    /// <inheritdoc/>
    public string Name => "pictures";

    /// <inheritdoc/>
    public int Place => 40;

    /// <inheritdoc/>
    public Section? Build(ReportContext context)
    {
        if (context.Pictures.Count == 0) return null;
        return new("pictures", "Pictures", [.. context.Pictures.Select(picture => Draw(picture, context))]);
    }

    /// <summary>The anchor of a picture's figure.</summary>
    internal static string Anchor(string sha256) => "picture-" + sha256[..12];

    private static Figure Draw(ReportPicture picture, ReportContext context)
    {
        // Text a fortieth of the picture's width reads well on a page of any width.
        var size = picture.Width / 42.0;
        var pen = new SvgPen(picture.Width, picture.Height).Picture(picture.File);
        var scales = context.Model.Scale(picture.Sha256).References;
        foreach (var scale in scales)
        {
            var reference = scale.Value.Reference;
            pen.Measured(reference.From.X, reference.From.Y, reference.To.X, reference.To.Y, Millimetres(reference.LengthMm) + " known", size, "reference");
            context.Cite(scale.Id);
        }

        foreach (var length in Here(context.View.Live<LengthSighting>(), length => length.InPicture?.Picture, picture, context))
        {
            var ends = length.Value.InPicture!;
            var value = context.Model.Value($"length:{length.Value.Spot}:{length.Value.What}");
            pen.Measured(ends.From.X, ends.From.Y, ends.To.X, ends.To.Y, $"{length.Value.Spot} {length.Value.What}: {ReportContext.Print(value)}", size, "measured");
            context.Cite(length.Id);
        }

        var spots = Here(context.View.Live<SpotSighting>(), spot => spot.Picture.Length > 0 ? spot.Picture : null, picture, context).ToList();
        foreach (var spot in spots)
        {
            if (spot.Value.At is { } at) pen.Leader(at.X, at.Y, spot.Value.Spot, size);
            else if (spot.Value.Box is { } box) pen.Box(box.X, box.Y, box.Width, box.Height, "leader").Words(box.X, box.Y - (size * 0.3), spot.Value.Spot, size, "leader-words");
        }

        if (scales.Count > 0)
        {
            var reference = scales[0].Value.Reference;
            var perMm = reference.From.DistanceTo(reference.To) / reference.LengthMm;
            var bar = NiceLength(picture.Width / 6.0 / perMm);
            pen.ScaleBar(bar * perMm, Millimetres(bar), size);
        }

        return new(
            Anchor(picture.Sha256),
            pen.Drawing,
            $"The picture {picture.Name} with {scales.Count} known lengths and {spots.Count} spots drawn in",
            [
                new TextRun(scales.Count > 0 ? "With its scale. Original " : "No scale was set in this picture. Original "),
                new MarkRun(picture.Name),
                new TextRun(string.Create(CultureInfo.InvariantCulture, $", {picture.Width} × {picture.Height} px, SHA-256 ")),
                new MarkRun(picture.Sha256),
                new TextRun("; shown is "),
                new LinkRun("a copy without place and serial numbers", picture.File, LinkKind.File),
                new TextRun("."),
            ]);
    }

    private static IEnumerable<Sighting<T>> Here<T>(IReadOnlyList<Sighting<T>> sightings, Func<T, string?> name, ReportPicture picture, ReportContext context)
        where T : class =>
        sightings.Where(sighting => name(sighting.Value) is { } reference && context.Model.Picture(reference) is { Found: true } answer && answer.Sha256 == picture.Sha256);

    private static string Millimetres(double mm) => mm.ToString("0.###", CultureInfo.InvariantCulture) + " mm";

    /// <summary>The largest of 1, 2, 5 times a power of ten that fits.</summary>
    private static double NiceLength(double most)
    {
        var step = 1e-4;
        while (step * 10 <= most) step *= 10;
        return step * 5 <= most ? step * 5 : step * 2 <= most ? step * 2 : step;
    }
}
