using System.Globalization;
using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Tracing.Kinds;

/// <summary>Pins were counted or found on ground.</summary>
public sealed class PinsKind : EvidenceKind<PinsSighting>
{
    private const int MostPins = 10_000;

    /// <inheritdoc/>
    public override string Name => "pins";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Sighting;

    /// <inheritdoc/>
    public override string Room => "Trace";

    /// <inheritdoc/>
    public override string Says => "How many pins a body has, and which of them are on ground.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("spot", "text", true, "what was counted"),
        new("count", "whole number", false, "pins, balls or pads, without a thermal pad; this or ground must be there"),
        new("ground", "list", false, "pins on ground: numbers, or texts such as A4"),
    ];

    /// <inheritdoc/>
    public override Outcome<PinsSighting> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var spot = reader.Text("spot", Points.LongestName);
        var count = reader.OptionalWhole("count", 1, MostPins);
        var ground = Ground(reader, count);
        if (!reader.Has("count") && !reader.Has("ground")) reader.Fail("count", "given, or \"ground\"");
        return reader.Done(() => new PinsSighting(spot, (int?)count, ground.ToValueList()));
    }

    private static List<string> Ground(PayloadReader reader, long? count)
    {
        var pins = new List<string>();
        if (reader.Raw("ground") is not { } given) return pins;
        if (given.ValueKind != JsonValueKind.Array || given.GetArrayLength() > MostPins)
        {
            reader.Fail("ground", "a list of pins");
            return pins;
        }

        var at = 0;
        foreach (var element in given.EnumerateArray())
        {
            var place = string.Create(CultureInfo.InvariantCulture, $"ground[{at++}]");
            var pin = Pin(element);
            if (pin.Length == 0) reader.Fail(place, "a pin such as 13 or \"A4\"");
            else if (pins.Contains(pin, StringComparer.Ordinal)) reader.Fail(place, $"named once; {pin} was there before");
            else if (count is { } most && int.TryParse(pin, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && (number < 1 || number > most + 1)) reader.Fail(place, string.Create(CultureInfo.InvariantCulture, $"a pin from 1 to {most + 1} (the last is the thermal pad)"));
            else pins.Add(pin);
        }

        return pins;
    }

    private static string Pin(JsonElement element)
    {
        if (element.ValueKind == JsonValueKind.Number) return element.TryGetInt32(out var number) && number > 0 ? number.ToString(CultureInfo.InvariantCulture) : "";
        if (element.ValueKind != JsonValueKind.String) return "";
        var text = element.GetRawText()[1..^1];
        return text.Length is >= 1 and <= 6 && text.All(char.IsAsciiLetterOrDigit) ? text : "";
    }
}
