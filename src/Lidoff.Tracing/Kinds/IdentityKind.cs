using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Tracing.Kinds;

/// <summary>An identity register was read.</summary>
public sealed class IdentityKind : EvidenceKind<IdentitySighting>
{
    /// <inheritdoc/>
    public override string Name => "identity";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Sighting;

    /// <inheritdoc/>
    public override string Room => "Trace";

    /// <inheritdoc/>
    public override string Says => "What an identity register returned, with the spot or the address that was asked.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("spot", "text", false, "the part asked; this or the address must be there"),
        new("address", "text", false, "7-bit address such as 0x68"),
        new("reg", "text", true, "register, hexadecimal, such as 0x75"),
        new("value", "text", true, "value returned, hexadecimal, such as 0x71, 16 digits at most"),
    ];

    /// <inheritdoc/>
    public override Outcome<IdentitySighting> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var spot = reader.OptionalText("spot", Points.LongestName) ?? "";
        var address = HexWord.Address(reader, "address");
        // Eight digits: what is read over a debug port has a word's address, such as 0x10000100.
        var register = HexWord.Read(reader, "reg", 8);
        if (register > int.MaxValue) reader.Fail("reg", "a register below 0x80000000");
        var value = HexWord.Read(reader, "value", 16);
        if (!reader.Has("spot") && !reader.Has("address")) reader.Fail("spot", "given, or \"address\"");
        return reader.Done(() => new IdentitySighting(spot, address, (int)register, value));
    }
}
