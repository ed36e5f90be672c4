using Lidoff.Evidence.Folding;
using Lidoff.Weighing.Modelling;
using Lidoff.Weighing.Quarrels;
using Lidoff.Weighing.Questions;

namespace Lidoff.Weighing.Moves;

/// <summary>What questions and moves are worked out from, gathered once.</summary>
internal sealed class MoveBench(IDossierView view, DossierModel model, IReadOnlyList<TiedClaim> claims, IReadOnlyList<Quarrel>? quarrels = null)
{
    private IReadOnlyList<Quarrel>? found = quarrels;

    public IDossierView View => view;

    public DossierModel Model => model;

    public IReadOnlyList<Quarrel> Quarrels => found ??= QuarrelBook.Find(view, model);

    public TiedClaim? Claim(string name) => claims.FirstOrDefault(claim => claim.Name == name);
}
