using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;

namespace Lidoff.Tracing.Kinds;

/// <summary>A pad was found.</summary>
public sealed class PadKind : EvidenceKind<PadSighting>
{
    /// <inheritdoc/>
    public override string Name => "pad";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Sighting;

    /// <inheritdoc/>
    public override string Room => "Trace";

    /// <inheritdoc/>
    public override string Says => "A pad, pin or test pad that can be touched, and where it lies in a picture; the newest entry of a pad counts.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("pad", "text", true, "its number or name, such as 13, A4 or TP5"),
        new("spot", "text", false, "the part it belongs to; left out for a pad of its own"),
        new("name", "text", false, "what a pin-out calls it, such as VDD"),
        new("role", "text", false, "electrical role: " + string.Join(", ", PadRoles.Words)),
        new("side", "text", false, "top or bottom"),
        new("picture", "text", false, "file name, entry id or the first digits of the file's hash; with point"),
        new("point", "point", false, "where it lies, px"),
    ];

    /// <inheritdoc/>
    public override Outcome<PadSighting> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var pad = reader.Text("pad", 20).Trim();
        var spot = reader.OptionalText("spot", 19)?.Trim() ?? "";
        var name = reader.OptionalText("name", Points.LongestName) ?? "";
        var role = reader.OptionalOneOf("role", "", [.. PadRoles.Words.Select(word => (word, word))]);
        var side = reader.OptionalOneOf("side", PadSide.Unknown, ("top", PadSide.Top), ("bottom", PadSide.Bottom));
        var picture = reader.OptionalText("picture", 255) ?? "";
        PicturePoint? at = reader.OptionalPoint("point") is { } place ? new(place.X, place.Y) : null;
        Points.Needs(reader, "point", "picture");
        Points.Needs(reader, "picture", "point");
        // Only then does "U3.13" in a touch mean this pad.
        if (spot.Length > 0 && pad.Length > 0 && !pad.All(char.IsAsciiLetterOrDigit)) reader.Fail("pad", "letters and digits when \"spot\" is given");
        return reader.Done(() => new PadSighting(spot, pad, name, role, side, picture, at));
    }
}
