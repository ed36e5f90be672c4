using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Kinds;

/// <summary>A length, clicked in a picture or read from an instrument.</summary>
public sealed class LengthKind : EvidenceKind<LengthSighting>
{
    /// <inheritdoc/>
    public override string Name => "length";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Sighting;

    /// <inheritdoc/>
    public override string Room => "See";

    /// <inheritdoc/>
    public override string Says => "A length: two ends in a picture, or a value read from a calliper or another instrument.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("spot", "text", true, "what it belongs to"),
        new("what", "text", true, "which length: width, height, span of 14 leads …"),
        new("picture", "text", false, "file name, entry id or the first digits of the file's hash; with from and to"),
        new("from", "point", false, "one end, px"),
        new("to", "point", false, "the other end, px"),
        new("height_mm", "number", false, "height above the board, mm, positive towards the camera (default 0)"),
        new("click_u_px", "number", false, "standard uncertainty of a click, px (default 1)"),
        new("ends_u_px", "numbers", false, "standard uncertainty of each end along the length, px, where it is known apart from the click: two numbers"),
        new("ends_by", "text", false, "what moved the ends onto edges (edges 2); missing where they lie as clicked"),
        new("clicked", "points", false, "where a person clicked, px, where ends_by moved them: two ends, or three or four corners of a body"),
        new("mm", "number", false, "the value an instrument gave, mm, instead of picture, from and to"),
        new("u_mm", "number", false, "its standard uncertainty, mm (default that of the instrument: calliper 0.015, micrometer 0.003, loupe 0.031, ruler 0.23, tape 0.5)"),
        new("instrument", "text", false, "which instrument"),
    ];

    /// <inheritdoc/>
    public override Outcome<LengthSighting> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var spot = SpotName.Read(reader);
        var what = reader.Text("what", 100);
        var clicked = reader.Has("picture") || reader.Has("from") || reader.Has("to");
        if (clicked && reader.Has("mm")) reader.Fail("mm", "left out when a picture with from and to is given: a length has one origin");
        if (clicked) return InPicture(reader, spot, what);
        var mm = reader.Number("mm", NumberRange.Positive);
        var instrument = reader.OptionalText("instrument", 100) ?? "";
        var u = reader.OptionalNumber("u_mm", NumberRange.NotNegative) ?? InstrumentErrors.For(instrument);
        return reader.Done(() => new LengthSighting(spot, what, null, new(mm, u, instrument)));
    }

    private static Outcome<LengthSighting> InPicture(PayloadReader reader, string spot, string what)
    {
        var picture = reader.Text("picture", 255);
        var (from, to) = Ends.Read(reader);
        var height = reader.OptionalNumber("height_mm") ?? 0;
        var click = reader.OptionalNumber("click_u_px", NumberRange.NotNegative) ?? MeasureJob.DefaultClickPx;
        var ends = reader.Numbers("ends_u_px", 0, 2, NumberRange.NotNegative);
        if (ends.Count == 1) reader.Fail("ends_u_px", SeeingSentences.BothEnds);
        var by = reader.OptionalText("ends_by", 100) ?? "";
        var clicked = reader.Points("clicked", 0, 4);
        if (clicked.Count == 1 || (clicked.Count > 0) != (by.Length > 0)) reader.Fail("clicked", SeeingSentences.ClickedWithEndsBy);
        return reader.Done(() => new LengthSighting(spot, what, new(picture, from, to, height, click)
        {
            EndsUPx = ends.Count == 2 ? (ends[0], ends[1]) : null, EndsBy = by, Clicked = [.. clicked.Select(point => new PicturePoint(point.X, point.Y))],
        }, null));
    }
}
