using Lidoff.Evidence.Folding;
using Lidoff.Naming.Kinds;
using Lidoff.Numbers.Failing;

namespace Lidoff.Weighing.Modelling;

/// <summary>
/// Whose sightings make up the belief about one spot. Two specimens may hold different parts at one place, so only those of one count:
/// of the one whose mark was read last, where no mark names one, of the one seen last in what comes first here: register, address,
/// pins, body, pitch, supply. A person's word that specimens are alike there joins them. What was noted for no specimen counts for all.
/// </summary>
public sealed class SpotSpecimens
{
    private readonly HashSet<string> counted;

    private SpotSpecimens(string lead, HashSet<string> counted)
    {
        Lead = lead;
        this.counted = counted;
    }

    /// <summary>The specimen that leads; empty where none was named, and then all count.</summary>
    public string Lead { get; }

    /// <summary>Whose sightings count.</summary>
    /// <param name="newest">Specimens of the newest sightings, the table that decides first in front; empty ones name none.</param>
    /// <param name="alike">What a person said about specimens of this spot.</param>
    public static SpotSpecimens Of(IEnumerable<string> newest, IReadOnlyList<Sighting<SpecimensAlike>> alike)
    {
        var lead = Guard.NotNull(newest).FirstOrDefault(specimen => specimen.Length > 0) ?? "";
        Guard.NotNull(alike);
        var counted = new HashSet<string>(StringComparer.Ordinal) { lead };
        // A like B and B like C join all three, in whatever order it was said.
        for (var more = true; more;)
        {
            more = false;
            foreach (var said in alike.Where(each => each.Value.Specimens.Any(counted.Contains)))
            {
                foreach (var specimen in said.Value.Specimens) more |= counted.Add(specimen);
            }
        }

        return new(lead, counted);
    }

    /// <summary>True when what was seen on a specimen counts.</summary>
    public bool Counts(string specimen) => Guard.NotNull(specimen).Length == 0 || Lead.Length == 0 || counted.Contains(specimen);

    /// <summary>Those that count, in the order given.</summary>
    internal IReadOnlyList<Sighting<T>> Of<T>(IReadOnlyList<Sighting<T>> all)
        where T : class => Lead.Length == 0 ? all : [.. all.Where(each => Counts(each.Specimen))];
}
