using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Composing;

namespace Lidoff.Seeing.Kinds;

/// <summary>A picture made of pictures: what of, how, and how well it came out. Stored once and never made again in silence.</summary>
public sealed class ComposedKind : EvidenceKind<ComposedSighting>
{
    private const int LongestName = 255;

    /// <summary>Words of the methods.</summary>
    public static IReadOnlyList<(string Word, ComposeMethod Method)> Methods { get; } =
        [("stack", ComposeMethod.Stack), ("stitch", ComposeMethod.Stitch), ("lights", ComposeMethod.Lights), ("average", ComposeMethod.Average)];

    /// <inheritdoc/>
    public override string Name => "composed";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Sighting;

    /// <inheritdoc/>
    public override string Room => "See";

    /// <inheritdoc/>
    public override string Says => "A machine made a picture of pictures: a focus stack, a stitched board, a light set or an average.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("picture", "text", true, "content hash of what was made"),
        new("second", "text", false, "content hash of the heights of a stack or the relief of a light set"),
        new("method", "text", true, string.Join(", ", Methods.Select(each => each.Word))),
        new("inputs", "texts", true, "content hashes of what it is made of, in their order; two at least"),
        new("left_out", "texts", false, "content hashes of what was given and not used"),
        new("settings", "text", true, "what it was made with"),
        new("program", "text", true, "versions of the program and the library that made it"),
        new("first_at", "point", false, "where the first input's corner lies in it, px, where one of its px is one of that input's"),
        new("rest_px", "number", false, "what was left between the inputs, px, root mean square"),
        new("loop_px", "number", false, "what was left around the worst closed loop, px"),
        new("heights_mm", "two numbers", false, "what the darkest and the brightest value of the heights stand for, mm towards the camera from the first slice's focus"),
        new("heights_slices", "two numbers", false, "the same in slices, where their step is not known"),
        new("says", "texts", false, "what was said of how it came out"),
    ];

    /// <inheritdoc/>
    public override Outcome<ComposedSighting> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var picture = reader.Text("picture", LongestName);
        var second = reader.OptionalText("second", LongestName) ?? "";
        var method = reader.OneOf("method", [.. Methods]);
        var inputs = reader.Texts("inputs", 2, Composer.Most, LongestName);
        var left = reader.Texts("left_out", 0, Composer.Most, LongestName);
        var settings = reader.Text("settings");
        var program = reader.Text("program", LongestName);
        var at = reader.OptionalPoint("first_at");
        var rest = reader.OptionalNumber("rest_px", NumberRange.NotNegative);
        var loop = reader.OptionalNumber("loop_px", NumberRange.NotNegative);
        var mm = reader.OptionalPair("heights_mm");
        var slices = reader.OptionalPair("heights_slices");
        if (mm is not null && slices is not null) reader.Fail("heights_mm", "heights in mm or in slices, not both");
        var says = reader.Texts("says", 0, 1000);
        return reader.Done(() => new ComposedSighting(
            picture, second, method, inputs, left, settings, program, at is { } point ? new PicturePoint(point.X, point.Y) : null, rest, loop, mm ?? slices, mm is not null, says));
    }
}
