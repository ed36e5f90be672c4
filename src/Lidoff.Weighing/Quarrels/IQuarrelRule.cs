using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Registering;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Weighing.Quarrels;

/// <summary>One kind of contradiction, found by type. A rule only speaks when its members cannot all be true: "unlikely" is no quarrel.</summary>
public interface IQuarrelRule : INamed
{
    /// <summary>Every quarrel of this kind in the dossier, in a fixed order.</summary>
    IEnumerable<Quarrel> Find(IDossierView view, DossierModel model);
}
