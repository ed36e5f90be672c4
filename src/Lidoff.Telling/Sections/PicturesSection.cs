using System.Globalization;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Shapes;
using Lidoff.Telling.Claims;
using Lidoff.Telling.Documents;
using Lidoff.Telling.Drawing;
using Lidoff.Telling.Drawing.Labelling;
using Lidoff.Telling.Reporting;
using Lidoff.Telling.Writing;
using Lidoff.Weighing.Modelling;

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
        return new("pictures", "Pictures", [.. BoardParagraphs.Of(context), .. context.Pictures.Select(picture => Draw(picture, context))]);
    }

    /// <summary>The anchor of a picture's figure.</summary>
    internal static string Anchor(string sha256) => "picture-" + sha256[..12];

    private static Figure Draw(ReportPicture picture, ReportContext context)
    {
        // Text a fortieth of the picture's width reads well on a page of any width.
        var size = picture.Width / 42.0;
        var spots = Here(context.View.Live<SpotSighting>(), spot => spot.Picture.Length > 0 ? spot.Picture : null, picture, context).ToList();
        var layout = LabelLayout.Of(picture.Width, picture.Height, [.. spots.Select(spot => Label(spot.Value, picture, size)).OfType<LabelWish>()], size);
        var pen = new SvgPen(layout.Width, layout.Height)
            .Box(0, 0, layout.Width, layout.Height, "margin")
            .Picture(picture.File, layout.PictureX, layout.PictureY, picture.Width, picture.Height);
        // Leaders go under everything else: none may strike out the words of a length.
        foreach (var box in spots.Select(spot => spot.Value.Box).OfType<PixelBox>()) pen.Box(layout.PictureX + box.X, layout.PictureY + box.Y, box.Width, box.Height, "leader");
        pen.Labels(layout, size);
        var scales = context.Model.Scale(picture.Sha256).References;
        foreach (var known in scales)
        {
            var reference = known.Value.Reference;
            Measured(pen, layout, reference.From, reference.To, Millimetres(reference.LengthMm) + " known", size, "reference");
            context.Cite(known.Id);
        }

        foreach (var length in Here(context.View.Live<LengthSighting>(), length => length.InPicture?.Picture, picture, context))
        {
            var ends = length.Value.InPicture!;
            var value = context.Model.Value($"length:{length.Value.Spot}:{length.Value.What}");
            Measured(pen, layout, ends.From, ends.To, $"{length.Value.Spot} {length.Value.What}: {ReportContext.Print(value)}", size, "measured");
            context.Cite(length.Id);
        }

        foreach (var shape in Here(context.View.Live<ClickedShape>(), shape => shape.Picture, picture, context)) Clicked(pen, layout, shape, size, context);

        var scale = DossierPicture.Scale(context.Model, picture.Sha256, new(picture.Width, picture.Height));
        if (scale is not null)
        {
            var bar = BarLength.Of(0.35 * picture.Width / scale.PxPerMm);
            pen.ScaleBar(bar * scale.PxPerMm, Bar(bar, scale), size, layout.PictureX);
        }

        return new(
            Anchor(picture.Sha256),
            pen.Drawing,
            $"The picture {picture.Name} with {scales.Count} known lengths and {spots.Count} spots drawn in",
            [
                new TextRun(Scale(scale) + " Original "),
                new MarkRun(picture.Name),
                new TextRun(string.Create(CultureInfo.InvariantCulture, $", {picture.Width} × {picture.Height} px, SHA-256 ")),
                new MarkRun(picture.Sha256),
                new TextRun("; shown is "),
                new LinkRun("a copy without place and serial numbers", picture.File, LinkKind.File),
                new TextRun("."),
            ]);
    }

    // From place to place, closed where it goes around something; the words stand at the first side.
    private static void Clicked(SvgPen pen, LabelLayout layout, Sighting<ClickedShape> shape, double size, ReportContext context)
    {
        var (points, kind) = (shape.Value.Points, shape.Value.Shape);
        var words = $"{shape.Value.Spot} {shape.Value.What}: {ReportContext.Print(context.Model.Value(ShapeReference.Of(shape.Value)))}";
        Measured(pen, layout, points[0], points[1], words, size, "measured");
        var sides = kind is ShapeKind.Circle or ShapeKind.Area ? points.Count : points.Count - 1;
        for (var i = 1; i < sides; i++)
        {
            var (from, to) = (points[i], points[(i + 1) % points.Count]);
            pen.Line(layout.PictureX + from.X, layout.PictureY + from.Y, layout.PictureX + to.X, layout.PictureY + to.Y, "measured");
        }

        context.Cite(shape.Id);
    }

    private static string Bar(double mm, BarScale scale) =>
        $"{BarLength.Words(mm)}{(scale.Doubtful ? " " + LabelledSentences.Doubt(scale.RelativeU) : "")}{(scale.ByBoard ? " by the board" : "")}";

    private static string Scale(BarScale? scale) => scale switch
    {
        null => "No scale is known in this picture.",
        { ByBoard: true } => $"Its scale is that of the board it lies on, known to {LabelledSentences.Doubt(scale.RelativeU)}.",
        _ => "With its scale.",
    };

    private static IEnumerable<Sighting<T>> Here<T>(IReadOnlyList<Sighting<T>> sightings, Func<T, string?> name, ReportPicture picture, ReportContext context)
        where T : class =>
        sightings.Where(sighting => name(sighting.Value) is { } reference && context.Model.Picture(reference) is { Found: true } answer && answer.Sha256 == picture.Sha256);

    /// <summary>Where a spot's label wants to be; null for a spot outside the picture, which its entry still tells of.</summary>
    private static LabelWish? Label(SpotSighting spot, ReportPicture picture, double size)
    {
        if (spot.Middle is not { } point || !(point.X >= 0 && point.X <= picture.Width && point.Y >= 0 && point.Y <= picture.Height)) return null;
        // The page's own face is not known here; no letter of a sans-serif designator is wider than 0.75 of its height.
        return new(spot.Spot, point, Math.Max(1, Escaping.Shown(spot.Spot).Length) * size * 0.75, size * 1.3);
    }

    private static void Measured(SvgPen pen, LabelLayout layout, PicturePoint from, PicturePoint to, string text, double size, string style) =>
        pen.Measured(layout.PictureX + from.X, layout.PictureY + from.Y, layout.PictureX + to.X, layout.PictureY + to.Y, text, size, style);

    private static string Millimetres(double mm) => mm.ToString("0.###", CultureInfo.InvariantCulture) + " mm";
}
