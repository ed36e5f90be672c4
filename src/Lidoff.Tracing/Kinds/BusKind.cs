using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Tracing.Kinds;

/// <summary>Something answered on a bus.</summary>
public sealed class BusKind : EvidenceKind<BusSighting>
{
    private static readonly (string Word, BusType Value)[] Types = [.. Enum.GetValues<BusType>().Select(type => (type.ToString().ToLowerInvariant(), type))];

    /// <inheritdoc/>
    public override string Name => "bus";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Sighting;

    /// <inheritdoc/>
    public override string Room => "Trace";

    /// <inheritdoc/>
    public override string Says => "A part answered on a bus: the sort of bus, its 7-bit address, how often.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("type", "text", true, "one of i2c, spi, uart, onewire, i2s, pdm, swd, jtag, usb"),
        new("address", "text", false, "7-bit address such as 0x68; must be there on i2c"),
        new("spot", "text", false, "the spot that answered"),
        new("acks", "whole number", false, "how often it answered"),
        new("nacks", "whole number", false, "how often it did not"),
    ];

    /// <inheritdoc/>
    public override Outcome<BusSighting> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var type = reader.OneOf("type", Types);
        var address = HexWord.Address(reader, "address");
        var spot = reader.OptionalText("spot", Points.LongestName) ?? "";
        var acks = reader.OptionalWhole("acks", 0, long.MaxValue);
        var nacks = reader.OptionalWhole("nacks", 0, long.MaxValue);
        if (reader.Raw("type") is { ValueKind: JsonValueKind.String } typed && typed.GetRawText() == "\"i2c\"" && !reader.Has("address")) reader.Fail("address", "given on i2c");
        if (type != BusType.I2c && reader.Has("address")) reader.Fail("address", "left out on a bus without 7-bit addresses");
        return reader.Done(() => new BusSighting(type, address, spot, acks, nacks));
    }
}
