namespace Lidoff.Tracing.Kinds;

/// <summary>Electrical roles of pads, in the words that pin-outs of symbol libraries use.</summary>
public static class PadRoles
{
    /// <summary>The words in the order in which they are offered.</summary>
    public static IReadOnlyList<string> Words { get; } =
    [
        "power_in", "power_out", "input", "output", "bidirectional", "tri_state", "open_collector", "open_emitter", "passive", "no_connect", "unspecified",
    ];
}
