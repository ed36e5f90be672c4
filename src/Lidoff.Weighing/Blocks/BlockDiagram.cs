using System.Globalization;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Kinds;
using Lidoff.Tracing.Kinds;
using Lidoff.Tracing.Nets;

namespace Lidoff.Weighing.Blocks;

/// <summary>The device as blocks and lines, from spots, rails, buses and nets. Each line cites one of them or is a guess. Pure.</summary>
/// <param name="Blocks">Parts, buses, rails without a known source; in natural order of their names.</param>
/// <param name="Lines">Supply, then buses, then nets.</param>
public sealed record BlockDiagram(ValueList<Block> Blocks, ValueList<BlockLine> Lines)
{
    // Passives and what is no electrical part stay out of a block diagram unless a rail or a bus speaks of them.
    private static readonly HashSet<string> LeftOut = new(
        SpotClasses.All.Where(each => each.Letters is "H" or "R" or "C" or "Z" or "A" or "W" or "TP" or "X" or "MG" or "SH" || each.Word is "inductor").Select(each => each.Word), StringComparer.Ordinal);

    // Words of a role by which a part that masters buses is guessed.
    private static readonly string[] Masters = ["controller", "processor", "mcu", "radio", "soc"];

    private static readonly HashSet<string> Grounds = new(["GND", "VSS", "AGND", "DGND", "0V"], StringComparer.OrdinalIgnoreCase);

    /// <summary>The diagram of a dossier. <paramref name="part"/> names the part at a spot, empty where it is not known; default: none is named.</summary>
    public static BlockDiagram Of(IDossierView view, Func<string, string>? part = null)
    {
        var supply = SupplyTree.Of(Guard.NotNull(view));
        var spots = Newest(view);
        var buses = view.Live<BusSighting>().Where(bus => bus.Value.Spot.Length > 0).ToList();
        var parts = spots.Values.Where(spot => !LeftOut.Contains(spot.Class)).Select(spot => spot.Spot)
            .Concat(supply.Nodes.Where(node => node.Role != BlockSentences.UnknownSource).Select(node => node.Name)).Concat(buses.Select(bus => bus.Value.Spot)).ToHashSet(StringComparer.Ordinal);
        var blocks = parts.Select(name => new Block(name, BlockSort.Part, spots.GetValueOrDefault(name)?.Role ?? "", part?.Invoke(name) ?? ""))
            .Concat(supply.Nodes.Where(node => !parts.Contains(node.Name)).Select(node => new Block(node.Name, BlockSort.Rail, node.Role, "")))
            .Concat(buses.Select(bus => BusName(bus.Value)).Distinct(StringComparer.Ordinal).Select(name => new Block(name, BlockSort.Bus, "", "")));
        var lines = Supplies(supply).Concat(Buses(buses, spots, parts)).Concat(Nets(NetBook.Of(view), parts, supply));
        return new([.. blocks.OrderBy(block => block.Name, NaturalOrder.Instance).ThenBy(block => block.Name, StringComparer.Ordinal)], [.. lines]);
    }

    private static Dictionary<string, SpotSighting> Newest(IDossierView view)
    {
        var spots = new Dictionary<string, SpotSighting>(StringComparer.Ordinal);
        foreach (var spot in view.Live<SpotSighting>().Select(sighting => sighting.Value))
        {
            var before = spots.GetValueOrDefault(spot.Spot);
            spots[spot.Spot] = spot with { Role = spot.Role.Length > 0 ? spot.Role : before?.Role ?? "", Class = spot.Class.Length > 0 ? spot.Class : before?.Class ?? "" };
        }

        return spots;
    }

    private static IEnumerable<BlockLine> Supplies(SupplyTree supply) => supply.Feeds.Select(feed => new BlockLine(
        feed.From, feed.To, LineSort.Supply, [feed.Rail],
        feed.V is { } v ? string.Create(CultureInfo.InvariantCulture, $"{feed.Rail} {v:0.##} V") : feed.Rail, feed.Guess, [feed.Entry]));

    private static string BusName(BusSighting bus) => bus.Type.ToString().ToUpperInvariant() + " bus";

    /// <summary>A line from each bus to each part that answered on it, and one to the part that is taken for its master.</summary>
    private static IEnumerable<BlockLine> Buses(List<Sighting<BusSighting>> buses, Dictionary<string, SpotSighting> spots, HashSet<string> parts)
    {
        foreach (var bus in buses.GroupBy(bus => BusName(bus.Value), StringComparer.Ordinal).OrderBy(group => group.Key, StringComparer.Ordinal))
        {
            var answered = bus.GroupBy(each => each.Value.Spot, StringComparer.Ordinal).OrderBy(group => group.Key, NaturalOrder.Instance).ToList();
            foreach (var spot in answered)
            {
                var addresses = spot.Select(each => each.Value.Address).OfType<int>().Distinct().Order().Select(address => string.Create(CultureInfo.InvariantCulture, $"0x{address:x2}"));
                yield return new(bus.Key, spot.Key, LineSort.Bus, [bus.Key], string.Join(", ", addresses), false, [.. spot.Select(each => each.Id).Order()]);
            }

            var masters = parts.Where(name => answered.All(group => group.Key != name) && spots.GetValueOrDefault(name)?.Role is { } role && Masters.Any(word => role.Contains(word, StringComparison.OrdinalIgnoreCase)))
                .Order(NaturalOrder.Instance).ToList();
            // Which of several it is, nobody can tell from their roles.
            if (masters.Count == 1) yield return new(masters[0], bus.Key, LineSort.Bus, [bus.Key], "", true, []);
        }
    }

    /// <summary>One line for all nets between two parts; ground and rails are supply and stay out.</summary>
    private static IEnumerable<BlockLine> Nets(NetBook book, HashSet<string> parts, SupplyTree supply)
    {
        var rails = supply.Feeds.SelectMany(feed => new[] { feed.Rail, feed.Net }).Where(name => name.Length > 0).ToHashSet(StringComparer.Ordinal);
        var pairs = new SortedDictionary<string, (string From, string To, List<TracedNet> Nets)>(StringComparer.Ordinal);
        foreach (var net in book.Nets.Where(net => !Grounds.Contains(net.Name) && !rails.Contains(net.Name) && !net.Names.Any(rails.Contains)))
        {
            // A net of many parts is drawn as a star, so that no line stands for what is not there.
            // What has no pins, as an antenna, is touched as a whole.
            var on = net.Points.Select(point => point.Spot.Length > 0 ? point.Spot : point.Text).Where(parts.Contains).Distinct(StringComparer.Ordinal).Order(NaturalOrder.Instance).ToList();
            foreach (var other in on.Skip(1))
            {
                var key = on[0] + "\n" + other;
                if (!pairs.TryGetValue(key, out var pair)) pairs.Add(key, pair = (on[0], other, []));
                pair.Nets.Add(net);
            }
        }

        return pairs.Values.Select(pair => new BlockLine(
            pair.From, pair.To, LineSort.Net, [.. pair.Nets.Select(net => net.Name)],
            pair.Nets.Count == 1 ? pair.Nets[0].Name : string.Create(CultureInfo.InvariantCulture, $"{pair.Nets.Count} nets"), false,
            [.. pair.Nets.SelectMany(net => net.Links).Select(link => link.Entry).Distinct().Order()]));
    }
}
