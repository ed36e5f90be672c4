using Lidoff.Evidence.Folding;
using Lidoff.Numbers.Quantities;
using Lidoff.Opening.Kinds;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Weighing.Quarrels;

/// <summary>
/// Two weighings of one thing, or the mass that stands with a specimen and its weighing, whose difference is beyond what the scales can
/// tell. What lost something between them may weigh less, and another specimen may weigh anything.
/// </summary>
public sealed class MassesApartRule : IQuarrelRule
{
    /// <inheritdoc/>
    public string Name => "masses apart";

    /// <inheritdoc/>
    public IEnumerable<Quarrel> Find(IDossierView view, DossierModel model)
    {
        var sitting = new Lazy<OneSitting>(() => new(view));
        var masses = view.Live<MassSighting>();
        foreach (var spot in masses.GroupBy(mass => mass.Value.Spot, StringComparer.Ordinal).OrderBy(group => group.Key, StringComparer.Ordinal))
        {
            foreach (var (a, b) in Apart.Pairs([.. spot]).Where(pair => Apart.Of(pair.First.Value.G, pair.First.Value.UG, pair.Second.Value.G, pair.Second.Value.UG) && sitting.Value.Holds(pair.First, pair.Second)))
            {
                var thing = spot.Key.Length > 0 ? spot.Key : Whole(a.Specimen.Length > 0 ? a.Specimen : b.Specimen);
                yield return Told(thing, a.Id, a.Value.G, a.Value.UG, b.Id, b.Value.G, b.Value.UG);
            }
        }

        foreach (var stated in view.Newest<SpecimenSighting>(each => each.Specimen).Where(each => each.Value.MassG is not null))
        {
            var (g, u, name) = (stated.Value.MassG!.Value, stated.Value.UG, stated.Value.Specimen);
            foreach (var mass in masses.Where(mass => mass.Value.Spot.Length == 0 && Apart.Of(g, u, mass.Value.G, mass.Value.UG) && sitting.Value.Holds(stated, mass, name, mass.Specimen)))
            {
                yield return Told(Whole(name), stated.Id, g, u, mass.Id, mass.Value.G, mass.Value.UG);
            }
        }
    }

    private Quarrel Told(string thing, Evidence.Entries.EntryId a, double gA, double uA, Evidence.Entries.EntryId b, double gB, double uB) => new(
        Name,
        [.. new[] { a, b }.Order()],
        $"{thing} cannot weigh {QuantityText.Noted(gA, uA, "g")} and {QuantityText.Noted(gB, uB, "g")} with nothing taken off between; the later one counts until it is settled.",
        $"weigh {thing} once more, with the scale set to zero first, and take back the reading that is wrong");

    private static string Whole(string specimen) => specimen.Length > 0 ? "the whole of " + specimen : "the whole";
}
