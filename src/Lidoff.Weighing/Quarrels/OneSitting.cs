using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Opening.Cautioning;
using Lidoff.Opening.Kinds;

namespace Lidoff.Weighing.Quarrels;

/// <summary>
/// Whether two sightings were made of one specimen as it lay there: what was cut, lifted out, heated or put together between them may have
/// made both true, and so may another specimen. Rules make one when two sightings fight, so that a dossier in peace costs nothing.
/// </summary>
internal sealed class OneSitting
{
    // Acts after which a specimen weighs, connects and draws what it did before.
    private static readonly HashSet<StepAct> Harmless = [StepAct.Buy, StepAct.Look, StepAct.XRay, StepAct.Thermal, StepAct.Probe, StepAct.Board, StepAct.Publish];

    private readonly Dictionary<EntryId, int> places = [];
    private readonly List<(int At, string Specimen)> changes = [];
    private readonly bool several;
    private readonly bool unnamedIsOne;

    /// <summary>Over everything that counts in a dossier; linear in its entries.</summary>
    /// <param name="view">The dossier.</param>
    /// <param name="unnamedIsOne">
    /// True where what names no specimen is of one all the same, as touches are: nets are made of all of them. Else it may be of any where there are several.
    /// </param>
    public OneSitting(IDossierView view, bool unnamedIsOne = false)
    {
        this.unnamedIsOne = unnamedIsOne;
        for (var i = 0; i < view.Entries.Count; i++) places[view.Entries[i].Entry.Id] = i;
        var specimens = view.Live<SpecimenSighting>();
        several = specimens.Select(each => each.Value.Specimen).Distinct(StringComparer.Ordinal).Count() > 1;
        changes.AddRange(view.Live<StepSighting>().Where(step => !Harmless.Contains(step.Value.Act) || step.Value.Destroys.Length > 0).Select(step => (places[step.Id], step.Specimen)));
        // A cell that was taken off or put on changes every voltage, whether a step says so or not.
        changes.AddRange(view.Live<CellSighting>().Where(cell => cell.Value.Connected is not null).Select(cell => (places[cell.Id], cell.Specimen)));
    }

    /// <summary>True where both are of one specimen: named alike, or one unnamed where there is but one.</summary>
    public bool Same(string a, string b) => a == b ? a.Length > 0 || !several || unnamedIsOne : !several && (a.Length == 0 || b.Length == 0);

    /// <summary>True where nothing was noted between them that could have made both true, on one specimen.</summary>
    public bool Holds<T, TOther>(Sighting<T> a, Sighting<TOther> b, string aSpecimen, string bSpecimen)
        where T : class
        where TOther : class
    {
        var (first, last) = (Math.Min(places[a.Id], places[b.Id]), Math.Max(places[a.Id], places[b.Id]));
        return Same(aSpecimen, bSpecimen) && !changes.Exists(change => change.At > first && change.At < last && (Same(change.Specimen, aSpecimen) || Same(change.Specimen, bSpecimen)));
    }

    /// <summary>The same for sightings that name their specimen as every entry does.</summary>
    public bool Holds<T>(Sighting<T> a, Sighting<T> b)
        where T : class => Holds(a, b, a.Specimen, b.Specimen);
}
