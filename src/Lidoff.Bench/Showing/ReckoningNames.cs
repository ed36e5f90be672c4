using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Reckoning.Bound;
using Lidoff.Telling.Claims;

namespace Lidoff.Bench.Showing;

/// <summary>The bound numbers of a dossier.</summary>
public static class ReckoningNames
{
    /// <summary>Designator of every reckoning anybody bound, in natural order.</summary>
    public static IReadOnlyList<string> Of(IDossierView view) =>
        [.. view.Live<ReckonBinding>().Select(binding => binding.Value.Reckoning).Distinct(StringComparer.Ordinal).Order(NaturalOrder.Instance)];
}
