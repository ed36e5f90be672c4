using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Shapes;

namespace Lidoff.Seeing.Kinds;

/// <summary>A shape clicked in a picture: a circle by its edge, a pitch by its leads, an angle by its arms, an area by its corners.</summary>
public sealed class ClickedShapeKind : EvidenceKind<ClickedShape>
{
    /// <summary>Most places of one shape.</summary>
    public const int MostPlaces = 1000;

    /// <summary>Words of the shapes.</summary>
    public static IReadOnlyList<(string Word, ShapeKind Shape)> Shapes { get; } =
        [("circle", ShapeKind.Circle), ("pitch", ShapeKind.Pitch), ("angle", ShapeKind.Angle), ("area", ShapeKind.Area)];

    /// <inheritdoc/>
    public override string Name => "shape";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Sighting;

    /// <inheritdoc/>
    public override string Room => "See";

    /// <inheritdoc/>
    public override string Says => "A shape by places clicked in a picture: a circle's diameter, the pitch of a row, an angle, an area.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("spot", "text", true, "what it belongs to"),
        new("what", "text", false, "which of it: bore, outline … (default diameter, pitch, angle or area); a circle is then the length of that name"),
        new("shape", "text", true, string.Join(", ", Shapes.Select(each => each.Word))),
        new("picture", "text", true, "file name, entry id or the first digits of the file's hash"),
        new("points", "points", true, "three places or more, px: on a circle's edge, one on each lead, the corners of an outline in order; of an angle arm, corner, arm"),
        new("height_mm", "number", false, "height above the board, mm, positive towards the camera (default 0)"),
        new("click_u_px", "number", false, "standard uncertainty of each place, px (default 1)"),
        new("ends_by", "text", false, "what moved the places onto an edge (edges 2); missing where they lie as clicked"),
        new("clicked", "points", false, "where a person clicked, px, where ends_by moved them"),
    ];

    /// <summary>What a shape is called where nobody said.</summary>
    public static string Usual(ShapeKind shape) => shape == ShapeKind.Circle ? "diameter" : Shapes.First(each => each.Shape == shape).Word;

    /// <inheritdoc/>
    public override Outcome<ClickedShape> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var spot = SpotName.Read(reader);
        var shape = reader.OneOf("shape", [.. Shapes]);
        var what = reader.OptionalText("what", 100) ?? Usual(shape);
        var picture = reader.Text("picture", 255);
        var points = reader.Points("points", 3, shape == ShapeKind.Angle ? 3 : MostPlaces);
        var height = reader.OptionalNumber("height_mm") ?? 0;
        var click = reader.OptionalNumber("click_u_px", NumberRange.NotNegative) ?? MeasureJob.DefaultClickPx;
        var by = reader.OptionalText("ends_by", 100) ?? "";
        var clicked = reader.Points("clicked", 0, MostPlaces);
        if ((clicked.Count > 0) != (by.Length > 0)) reader.Fail("clicked", SeeingSentences.ClickedWithEndsBy);
        return reader.Done(() => new ClickedShape(spot, what, shape, picture, [.. points.Select(point => new PicturePoint(point.X, point.Y))], height, click)
        {
            EndsBy = by, Clicked = [.. clicked.Select(point => new PicturePoint(point.X, point.Y))],
        });
    }
}
