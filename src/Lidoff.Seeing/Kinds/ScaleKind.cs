using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Kinds;

/// <summary>A known length in a picture, or a target of known pitch; several of one picture together make its scale.</summary>
public sealed class ScaleKind : EvidenceKind<ScaleSighting>
{
    /// <inheritdoc/>
    public override string Name => "scale";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Sighting;

    /// <inheritdoc/>
    public override string Room => "See";

    /// <inheritdoc/>
    public override string Says => "A known length in a picture, or a target of known pitch; several of one picture together make its scale.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("picture", "text", true, "file name, entry id or the first digits of the file's hash"),
        new("from", "point", false, "one end, px from the picture's top left corner; with to and length_mm, or a pattern instead of the three"),
        new("to", "point", false, "the other end"),
        new("length_mm", "number", false, "its length, mm, above zero"),
        new("pattern", "object", false, "a checkerboard or dot grid found in the picture: kind (checker, dots), pitch_mm, u_mm (default 0.4 % of it, as prints are), points [[x, y], …] px, steps [[column, row], …], u_steps of each, bent (default 0), found"),
        new("middle", "point", false, "a line of a ruler between both ends: its two parts then tell a slant along it, and count as one source"),
        new("middle_mm", "number", false, "its distance from the first end, mm, between zero and length_mm; with middle"),
        new("u_mm", "number", false, "standard uncertainty of the length, mm (default 0)"),
        new("height_mm", "number", false, "height above the board, mm, positive towards the camera (default 0)"),
        new("camera_distance_mm", "number", false, "distance from board to camera, mm"),
        new("click_u_px", "number", false, "standard uncertainty of a click, px (default that of what is measured, 1)"),
        new("carried_from", "text", false, "the picture of the same camera and zoom whose scale this is; its doubt holds what putting the zoom back adds"),
        new("package", "text", false, "the spot whose recognised package the length is: what is measured by it is then no evidence of that spot's package"),
    ];

    /// <inheritdoc/>
    public override Outcome<ScaleSighting> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var picture = reader.Text("picture", 255);
        var target = reader.Inner("pattern") is { } inner ? TargetKeys.Read(inner) : null;
        var targeted = reader.Has("pattern");
        if (targeted && (reader.Has("from") || reader.Has("to") || reader.Has("length_mm") || reader.Has("u_mm") || reader.Has("middle"))) reader.Fail("pattern", "alone: its pitch is the known length, so from, to, length_mm, middle and u_mm stay away");
        var (from, to) = targeted ? default : Ends.Read(reader);
        var length = targeted ? 0 : reader.Number("length_mm", NumberRange.Positive);
        var middle = Between(reader, from, to, length);
        var u = reader.OptionalNumber("u_mm", NumberRange.NotNegative) ?? 0;
        var height = reader.OptionalNumber("height_mm") ?? 0;
        var camera = reader.OptionalNumber("camera_distance_mm", NumberRange.Positive);
        var click = reader.OptionalNumber("click_u_px", NumberRange.NotNegative);
        var carried = reader.OptionalText("carried_from", 255) ?? "";
        var package = reader.OptionalText("package", SpotName.Longest) ?? "";
        return reader.Done(() => new ScaleSighting(picture, target?.Longest(height) ?? new ReferenceLength(from, to, length, u, height, click) { Carried = carried.Length > 0, Middle = middle }, camera, carried, package));
    }

    private static (PicturePoint At, double Mm)? Between(PayloadReader reader, PicturePoint from, PicturePoint to, double length)
    {
        if (!reader.Has("middle") && !reader.Has("middle_mm")) return null;
        var (x, y) = reader.Point("middle");
        var mm = reader.Number("middle_mm", NumberRange.Positive);
        var at = new PicturePoint(x, y);
        if (at == from || at == to) reader.Fail("middle", "another place than both ends");
        if (mm >= length) reader.Fail("middle_mm", "less than length_mm, of which it is a part");
        return (at, mm);
    }
}
