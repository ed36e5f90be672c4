using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Registering;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Weighing.Quarrels;

/// <summary>Every rule asked about a dossier, in the order of the rules' names.</summary>
public static class QuarrelBook
{
    private static readonly Lazy<IReadOnlyList<IQuarrelRule>> Rules = new(() => Registry.Of<IQuarrelRule>(typeof(IQuarrelRule).Assembly).Items);

    /// <summary>The quarrels of a dossier.</summary>
    public static IReadOnlyList<Quarrel> Find(IDossierView view, DossierModel model) => [.. Rules.Value.SelectMany(rule => rule.Find(view, model))];
}
