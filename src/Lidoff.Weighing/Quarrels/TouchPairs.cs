using Lidoff.Evidence.Folding;
using Lidoff.Tracing.Kinds;

namespace Lidoff.Weighing.Quarrels;

/// <summary>Touches by the two points they were made between, whichever lead was on which.</summary>
internal static class TouchPairs
{
    /// <summary>Every pair that was touched more than once, in order of its points; its touches in fold order.</summary>
    public static IEnumerable<IReadOnlyList<Sighting<TouchSighting>>> Of(IDossierView view) => view.Live<TouchSighting>()
        .GroupBy(touch => Ends(touch.Value)).OrderBy(group => group.Key.First, StringComparer.Ordinal).ThenBy(group => group.Key.Last, StringComparer.Ordinal)
        .Select(group => group.ToList()).Where(group => group.Count > 1);

    /// <summary>The voltage of the one end that comes first against the other, V; null where none was read.</summary>
    public static double? Volts(TouchSighting touch) => touch.A.Text == Ends(touch).First ? touch.Volts : -touch.Volts;

    private static (string First, string Last) Ends(TouchSighting touch) =>
        string.CompareOrdinal(touch.A.Text, touch.B.Text) <= 0 ? (touch.A.Text, touch.B.Text) : (touch.B.Text, touch.A.Text);
}
