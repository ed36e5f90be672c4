using Lidoff.Evidence.Folding;
using Lidoff.Weighing.Modelling;
using Lidoff.Weighing.Quarrels;
using Lidoff.Weighing.Questions;

namespace Lidoff.Weighing.Moves;

/// <summary>What questions and moves are worked out from, gathered once.</summary>
internal sealed class MoveBench(IDossierView view, DossierModel model, IReadOnlyList<TiedClaim> claims)
{
    private IReadOnlyList<Quarrel>? quarrels;

    public IDossierView View => view;

    public DossierModel Model => model;

    public IReadOnlyList<Quarrel> Quarrels => quarrels ??= QuarrelBook.Find(view, model);

    public TiedClaim? Claim(string name) => claims.FirstOrDefault(claim => claim.Name == name);

    /// <summary>True when a reference has a value; words that are no reference have none.</summary>
    public bool Known(string reference) => reference.Contains(':', StringComparison.Ordinal) && model.Value(reference).Missing is null;
}
