using Lidoff.Evidence.Folding;
using Lidoff.Tracing.Nets;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Weighing.Quarrels;

/// <summary>Points that touches join and a touch holds apart, where the resistances they bound cannot go together.</summary>
public sealed class NetApartRule : IQuarrelRule
{
    /// <inheritdoc/>
    public string Name => "one net and apart";

    /// <inheritdoc/>
    public IEnumerable<Quarrel> Find(IDossierView view, DossierModel model) => NetBook.Of(view).Contradictions.Where(each => each.Impossible)
        .Select(each => new Quarrel(Name, each.Members, each.Say, "touch those points once more, with the cell out and the capacitors discharged", 3));
}
