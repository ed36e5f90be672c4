using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Numbers.Failing;
using Lidoff.Opening.Kinds;
using Lidoff.Seeing.Kinds;
using Lidoff.Tracing.Kinds;

namespace Lidoff.Weighing.Blocks;

/// <summary>
/// From where each part gets its power: source, converters, loads, from rails drawn by hand, the cell and voltages measured at pins.
/// A rail may feed several and a part may hang on several, so it is a tree only in the trade's word. Pure.
/// </summary>
/// <param name="Nodes">Sources, converters and loads, each in natural order.</param>
/// <param name="Feeds">Who feeds whom, rails in natural order, guesses last.</param>
/// <param name="Remarks">What does not fit, in sentences.</param>
public sealed record SupplyTree(ValueList<SupplyNode> Nodes, ValueList<SupplyFeed> Feeds, ValueList<string> Remarks)
{
    /// <summary>The supply of a dossier.</summary>
    public static SupplyTree Of(IDossierView view)
    {
        var rails = Guard.NotNull(view).Newest<RailDrawn>(rail => rail.Rail).Where(rail => !rail.Value.Dropped).ToList();
        var supplies = view.Newest<SupplySighting>(supply => supply.Spot);
        var feeds = rails.SelectMany(rail => rail.Value.To.Select(to => new SupplyFeed(Maker(rail.Value), to, rail.Value.Rail, rail.Value.V, rail.Value.Net, false, rail.Id))).ToList();
        var remarks = new List<string>();
        foreach (var supply in supplies) Fit(supply, rails, feeds, remarks);
        var cells = view.Live<CellSighting>().Select(cell => cell.Value.Spot).Concat(view.Live<SpotSighting>().Where(spot => spot.Value.Class == "cell").Select(spot => spot.Value.Spot));
        var names = feeds.SelectMany(feed => new[] { feed.From, feed.To }).Concat(rails.Select(rail => Maker(rail.Value))).Concat(cells).Concat(supplies.Select(supply => supply.Value.Spot))
            .Where(name => name.Length > 0).Distinct(StringComparer.Ordinal).Order(NaturalOrder.Instance).ThenBy(name => name, StringComparer.Ordinal).ToList();
        var makers = rails.Select(rail => Maker(rail.Value)).Concat(cells).ToHashSet(StringComparer.Ordinal);
        var unknown = rails.Where(rail => rail.Value.From.Length == 0).Select(rail => rail.Value.Rail).ToHashSet(StringComparer.Ordinal);
        var roles = view.Live<SpotSighting>().Where(spot => spot.Value.Role.Length > 0).GroupBy(spot => spot.Value.Spot, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => group.Last().Value.Role, StringComparer.Ordinal);
        var nodes = names.Select(name => new SupplyNode(
            name, Sort(name, feeds, makers), unknown.Contains(name) ? BlockSentences.UnknownSource : roles.GetValueOrDefault(name, ""),
            supplies.FirstOrDefault(supply => supply.Value.Spot == name)?.Value.V));
        remarks.AddRange(names.Where(name => FeedsItself(name, feeds)).Select(BlockSentences.Circle));
        return new([.. nodes.OrderBy(node => node.Sort)], [.. feeds], [.. remarks]);
    }

    private static string Maker(RailDrawn rail) => rail.From.Length > 0 ? rail.From : rail.Rail;

    private static SupplySort Sort(string name, List<SupplyFeed> feeds, HashSet<string> makers) =>
        feeds.Any(feed => feed.To == name) ? makers.Contains(name) ? SupplySort.Converter : SupplySort.Load
        : makers.Contains(name) ? SupplySort.Source : SupplySort.Load;

    /// <summary>Holds a measured voltage against the rails: says what is apart, and guesses a rail where just one fits a part that nobody tied to any.</summary>
    private static void Fit(Sighting<SupplySighting> supply, List<Sighting<RailDrawn>> rails, List<SupplyFeed> feeds, List<string> remarks)
    {
        var (spot, v) = (supply.Value.Spot, supply.Value.V);
        var feeding = rails.Where(rail => rail.Value.To.Contains(spot, StringComparer.Ordinal)).ToList();
        if (feeding.Count > 0)
        {
            if (feeding.All(rail => rail.Value.V is not null && !Fits(supply.Value, rail.Value))) remarks.Add(BlockSentences.OtherVoltage(spot, v, feeding[0].Value.Rail, feeding[0].Value.V!.Value));
            return;
        }

        var fitting = rails.Where(rail => rail.Value.V is not null && Maker(rail.Value) != spot && Fits(supply.Value, rail.Value)).ToList();
        if (fitting.Count == 1) feeds.Add(new(Maker(fitting[0].Value), spot, fitting[0].Value.Rail, fitting[0].Value.V, fitting[0].Value.Net, true, supply.Id));
        else remarks.Add(BlockSentences.NoRail(spot, v));
    }

    // Three standard uncertainties; a rail drawn without doubt is taken as written, to a twentieth.
    private static bool Fits(SupplySighting supply, RailDrawn rail)
    {
        var u = rail.UV ?? Math.Abs(rail.V!.Value) / 60;
        return Math.Abs(supply.V - rail.V!.Value) <= 3 * Math.Sqrt((supply.UV * supply.UV) + (u * u));
    }

    private static bool FeedsItself(string name, List<SupplyFeed> feeds)
    {
        var reached = new HashSet<string>(StringComparer.Ordinal);
        var queue = new Queue<string>([name]);
        while (queue.TryDequeue(out var at))
        {
            foreach (var feed in feeds.Where(feed => feed.From == at))
            {
                if (feed.To == name) return true;
                if (reached.Add(feed.To)) queue.Enqueue(feed.To);
            }
        }

        return false;
    }
}
