using Lidoff.Evidence.Folding;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Weighing.Quarrels;

/// <summary>Two people who had not seen each other's work replaced the same entry: both replacements stay.</summary>
public sealed class ConcurrentReplacementRule : IQuarrelRule
{
    /// <inheritdoc/>
    public string Name => "replaced twice";

    /// <inheritdoc/>
    public IEnumerable<Quarrel> Find(IDossierView view, DossierModel model) => view.Concurrent.Select(pair => new Quarrel(
        Name,
        [pair.Old, .. pair.Replacements],
        $"Entry {pair.Old.Hex[..12]} was replaced {pair.Replacements.Count} times by people who had not seen each other's work; all replacements count.",
        "undo all but one of the replacements",
        1)
    {
        // Whichever of them is right, the others go.
        Diagnoses = [.. pair.Replacements.Select(kept => new Diagnosis([.. pair.Replacements.Where(other => other != kept)], 1.0 / pair.Replacements.Count))],
    });
}
