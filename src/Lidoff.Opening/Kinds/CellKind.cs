using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Opening.Kinds;

/// <summary>The cell was looked at or measured.</summary>
public sealed class CellKind : EvidenceKind<CellSighting>
{
    // A hand meter on its 20 V range shows 0.01 V; callipers press a soft pouch by about a tenth. Common practice, no source.
    private const double DefaultUV = 0.01;
    private const double DefaultUMm = 0.1;

    private static readonly string[] Facts = ["volts", "ohms", "printed", "mm", "wires", "connected", "damaged"];

    /// <inheritdoc/>
    public override string Name => "cell";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Sighting;

    /// <inheritdoc/>
    public override string Room => "Open";

    /// <inheritdoc/>
    public override string Says => "The cell: its voltage, print, size and wires, whether it is connected, and whether it is damaged.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("spot", "text", false, "its designator"),
        new("volts", "number", false, "voltage at its wires, V"),
        new("u_v", "number", false, "its standard uncertainty, V (default 0.01)"),
        new("ohms", "number", false, "inner resistance, Ω"),
        new("printed", "text", false, "what is printed on it"),
        new("mm", "list of numbers", false, "length, width, thickness without tabs, mm"),
        new("u_mm", "number", false, "standard uncertainty of each, mm (default 0.1: a pouch gives way)"),
        new("wires", "whole number", false, "number of wires"),
        new("connected", "flag", false, "whether it is connected to the board now"),
        new("damaged", "flag", false, "whether it is swollen, dented, wet or hot"),
    ];

    /// <inheritdoc/>
    public override Outcome<CellSighting> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var spot = reader.OptionalText("spot", 40) ?? "";
        var volts = reader.OptionalNumber("volts", new NumberRange(-60, 60));
        var uV = reader.OptionalNumber("u_v", NumberRange.NotNegative) ?? DefaultUV;
        var ohms = reader.OptionalNumber("ohms", NumberRange.NotNegative);
        var printed = reader.OptionalText("printed", 400) ?? "";
        var mm = reader.Has("mm") ? reader.Numbers("mm", 3, 3, NumberRange.Positive) : [];
        var uMm = reader.OptionalNumber("u_mm", NumberRange.NotNegative) ?? DefaultUMm;
        var wires = reader.OptionalWhole("wires", 1, 20);
        var connected = reader.OptionalFlag("connected");
        var damaged = reader.OptionalFlag("damaged");
        if (!Facts.Any(reader.Has)) reader.Fail("volts", "given, or one of " + string.Join(", ", Facts.Skip(1)));
        return reader.Done(() => new CellSighting(spot, volts, uV, ohms, printed, mm, uMm, (int?)wires, connected, damaged));
    }
}
