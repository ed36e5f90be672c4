using System.Globalization;
using Lidoff.Tracing.Kinds;

namespace Lidoff.Tracing.Nets;

/// <summary>What nets say of their evidence.</summary>
public static class NetSentences
{
    /// <summary>A beep.</summary>
    public static string Beep(TouchSighting touch) => touch.ThresholdOhm is { } threshold
        ? Text($"{touch.A.Text} and {touch.B.Text} beep (below {threshold:0.###} Ω)")
        : $"{touch.A.Text} and {touch.B.Text} beep";

    /// <summary>A small resistance.</summary>
    public static string Low(TouchSighting touch) => Text($"{touch.A.Text} to {touch.B.Text} reads {touch.Ohms:0.###} Ω");

    /// <summary>An open circuit, a silent beeper or a large resistance.</summary>
    public static string Apart(TouchSighting touch) => touch switch
    {
        { Open: true } => $"{touch.A.Text} and {touch.B.Text} read open",
        { Beep: false } => $"{touch.A.Text} and {touch.B.Text} do not beep",
        _ => Text($"{touch.A.Text} to {touch.B.Text} reads {touch.Ohms:0.###} Ω"),
    };

    /// <summary>A pin counted to ground.</summary>
    public static string Ground(TouchPoint pin) => $"{pin.Text} was found on ground";

    /// <summary>A net drawn by hand.</summary>
    public static string Drawn(NetDrawn net) => net.Why.Length > 0 ? $"{net.Net} was drawn by hand: {net.Why}" : $"{net.Net} was drawn by hand";

    /// <summary>Points that are joined and apart at once.</summary>
    public static string OneAndApart(NetLink apart, IReadOnlyList<NetLink> path) => $"{apart.Say}, yet they are one net: {string.Join("; ", path.Select(link => link.Say).Distinct(StringComparer.Ordinal))}.";

    /// <summary>Two names for one net.</summary>
    public static string TwoNames(string first, string second, IReadOnlyList<NetLink> path) =>
        $"{first} and {second} were drawn as two nets, yet they are one: {string.Join("; ", path.Select(link => link.Say).Distinct(StringComparer.Ordinal))}.";

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
