using Lidoff.Bench.Showing;
using Lidoff.Evidence.Entries;
using Lidoff.Tracing.Kinds;
using Lidoff.Tracing.Nets;

namespace Lidoff.Bench.Rooms.Trace;

/// <summary>A line of the supply tree: a spot, or a rail that the spot above it makes.</summary>
/// <param name="Depth">How far it is indented, from 0.</param>
/// <param name="Spot">The spot; empty on a rail's line.</param>
/// <param name="Rail">The rail; empty on a spot's line.</param>
/// <param name="Volts">Its voltage in words; empty where it is not known.</param>
/// <param name="Net">The traced net it is; empty where none is, and the line is a guess.</param>
/// <param name="Again">True for a spot that stands further up already, so that a circle ends.</param>
public sealed record SupplyLine(int Depth, string Spot, string Rail, string Volts, string Net, bool Again)
{
    /// <summary>The tree in the order it is read. Spots that no rail feeds stand at the left; rails nobody makes stand under no spot.</summary>
    public static ValueList<SupplyLine> Of(ValueList<RailDrawn> rails, NetBook nets)
    {
        var fed = rails.SelectMany(rail => rail.To).ToHashSet(StringComparer.Ordinal);
        var roots = rails.Select(rail => rail.From).Where(from => !fed.Contains(from)).Distinct(StringComparer.Ordinal).Order(NaturalOrder.Instance).ToList();
        // A circle without a way in begins at its first rail.
        var lines = new List<SupplyLine>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var root in roots.Concat(rails.Select(rail => rail.From)))
        {
            if (!seen.Contains(root)) Add(root, 0);
        }

        return [.. lines];

        void Add(string spot, int depth)
        {
            var again = spot.Length > 0 && !seen.Add(spot);
            if (spot.Length == 0) seen.Add("");
            else lines.Add(new(depth, spot, "", "", "", again));
            if (again) return;
            var under = spot.Length == 0 ? depth : depth + 1;
            foreach (var rail in rails.Where(rail => rail.From == spot))
            {
                var net = rail.Net.Length > 0 ? rail.Net : rail.Rail;
                lines.Add(new(under, "", rail.Rail, Plain.With(rail.V, rail.UV, "V"), nets.Named(net) is null ? "" : net, false));
                foreach (var to in rail.To.Order(NaturalOrder.Instance)) Add(to, under + 1);
            }
        }
    }
}
