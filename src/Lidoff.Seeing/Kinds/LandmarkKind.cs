using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Kinds;

/// <summary>A feature of the board by which pictures are laid onto one another.</summary>
public sealed class LandmarkKind : EvidenceKind<LandmarkSighting>
{
    // The middle of a small hole is met to about a pixel and a half by hand. Common practice, no source.
    private const double DefaultUPx = 1.5;

    // A place taken from a drawing or by calliper from two edges.
    private const double DefaultUMm = 0.03;

    /// <inheritdoc/>
    public override string Name => "landmark";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Sighting;

    /// <inheritdoc/>
    public override string Room => "See";

    /// <inheritdoc/>
    public override string Says => "A hole, via, fiducial or corner under one name in every picture that shows it, so that pictures lie on one board.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("landmark", "text", true, "its name, the same in every picture of either side"),
        new("picture", "text", false, "file name, entry id or the first digits of the file's hash; with point"),
        new("point", "point", false, "where it shows, px"),
        new("u_px", "number", false, "standard uncertainty of each coordinate, px (default 1.5)"),
        new("found_by", "text", false, "entry of the match by which a machine found it; missing where it was pointed at by hand"),
        new("mm", "two numbers", false, "its place on the board seen from the top: mm to the right and downwards, from any corner"),
        new("u_mm", "number", false, "standard uncertainty of each, mm (default 0.03)"),
    ];

    /// <inheritdoc/>
    public override Outcome<LandmarkSighting> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var name = reader.Text("landmark", 40);
        var seen = reader.Has("picture") || reader.Has("point");
        if (!seen && !reader.Has("mm")) reader.Fail("point", "a picture with a point, or a place in mm");
        var picture = seen ? reader.Text("picture", 255) : "";
        PicturePoint? at = null;
        if (seen)
        {
            var (x, y) = reader.Point("point");
            at = new(x, y);
        }

        double? xMm = null, yMm = null;
        if (reader.Has("mm")) (xMm, yMm) = reader.Point("mm");
        var uPx = reader.OptionalNumber("u_px", NumberRange.Positive) ?? DefaultUPx;
        var uMm = reader.OptionalNumber("u_mm", NumberRange.Positive) ?? DefaultUMm;
        var found = reader.OptionalText("found_by", 64) ?? "";
        return reader.Done(() => new LandmarkSighting(name, picture, at, uPx, xMm, yMm, uMm, found));
    }
}
