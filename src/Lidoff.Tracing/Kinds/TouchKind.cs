using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Tracing.Kinds;

/// <summary>Two points were probed.</summary>
public sealed class TouchKind : EvidenceKind<TouchSighting>
{
    /// <inheritdoc/>
    public override string Name => "touch";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Sighting;

    /// <inheritdoc/>
    public override string Room => "Trace";

    /// <inheritdoc/>
    public override string Says => "One probe of two points: a beep or none, ohms, volts, or an open circuit. What does not connect is worth as much as what does.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("a", "text", true, "one point: a pin such as U3.13, or a name such as GND"),
        new("b", "text", true, "the other; the black lead for volts"),
        new("beep", "flag", false, "whether the meter beeped"),
        new("threshold_ohm", "number", false, "below how many ohms it beeps"),
        new("ohms", "number", false, "resistance, Ω"),
        new("u_ohm", "number", false, "its standard uncertainty, Ω"),
        new("volts", "number", false, "voltage of a against b, V"),
        new("u_v", "number", false, "its standard uncertainty, V"),
        new("open", "flag", false, "true when the meter showed an open circuit"),
    ];

    /// <inheritdoc/>
    public override Outcome<TouchSighting> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var a = Points.Read(reader, "a");
        var b = Points.Read(reader, "b");
        var beep = reader.OptionalFlag("beep");
        var threshold = reader.OptionalNumber("threshold_ohm", NumberRange.Positive);
        var ohms = reader.OptionalNumber("ohms", NumberRange.NotNegative);
        var uOhm = reader.OptionalNumber("u_ohm", NumberRange.NotNegative);
        var volts = reader.OptionalNumber("volts");
        var uV = reader.OptionalNumber("u_v", NumberRange.NotNegative);
        var open = reader.OptionalFlag("open") ?? false;
        if (a.Text.Length > 0 && a == b) reader.Fail("b", "another point than \"a\"");
        if (!reader.Has("beep") && !reader.Has("ohms") && !reader.Has("volts") && !reader.Has("open")) reader.Fail("beep", "given, or one of ohms, volts, open");
        if (open && (beep == true || ohms is not null)) reader.Fail("open", "left out when the meter beeped or read ohms");
        Points.Needs(reader, "threshold_ohm", "beep");
        Points.Needs(reader, "u_ohm", "ohms");
        Points.Needs(reader, "u_v", "volts");
        return reader.Done(() => new TouchSighting(a, b, beep, threshold, ohms, uOhm, volts, uV, open));
    }
}
