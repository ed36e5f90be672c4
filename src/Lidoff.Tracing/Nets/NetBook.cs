using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Numbers.Failing;
using Lidoff.Tracing.Kinds;

namespace Lidoff.Tracing.Nets;

/// <summary>
/// The nets of a dossier: points joined by touches, counted ground pins and by hand. Every joint counts the same, however often it
/// was seen; how probable a net is, is not reckoned here. Pure.
/// </summary>
/// <param name="Nets">Nets of two points and more, and those drawn by hand, in natural order of their names.</param>
/// <param name="Alone">Points that somebody noted or touched and that nothing joins yet, in natural order.</param>
/// <param name="Apart">What holds points apart, in fold order.</param>
/// <param name="Contradictions">What cannot all be true, in order of the nets.</param>
public sealed record NetBook(ValueList<TracedNet> Nets, ValueList<TouchPoint> Alone, ValueList<NetLink> Apart, ValueList<NetContradiction> Contradictions)
{
    /// <summary>The nets as they stand.</summary>
    public static NetBook Of(IDossierView view)
    {
        Guard.NotNull(view);
        var (joins, aparts) = (NetEvidence.Joins(view), NetEvidence.Aparts(view));
        var drawn = view.Newest<NetDrawn>(net => net.Net);
        var points = joins.Concat(aparts).SelectMany(link => new[] { link.A, link.B })
            .Concat(view.Live<TouchSighting>().SelectMany(touch => new[] { touch.Value.A, touch.Value.B }))
            .Concat(view.Live<PadSighting>().Select(pad => pad.Value.Point))
            .Concat(drawn.SelectMany(net => net.Value.Points))
            .Distinct().OrderBy(point => point.Text, NaturalOrder.Instance).ThenBy(point => point.Text, StringComparer.Ordinal).ToList();
        var groups = Groups(points, joins);
        var nets = new List<TracedNet>();
        var alone = new List<TouchPoint>();
        foreach (var group in groups)
        {
            var members = group.ToHashSet();
            var names = drawn.Where(net => members.Contains(net.Value.Points[0])).Select(net => net.Value.Net).ToList();
            if (group.Count == 1 && names.Count == 0) alone.Add(group[0]);
            else nets.Add(Net(group, names, [.. joins.Where(link => members.Contains(link.A))]));
        }

        nets = [.. nets.OrderBy(net => net.Name, NaturalOrder.Instance).ThenBy(net => net.Points[0].Text, StringComparer.Ordinal)];
        return new([.. nets], [.. alone], [.. aparts], [.. nets.SelectMany(net => Fights(net, aparts, drawn))]);
    }

    /// <summary>The net a point is on, or null where nothing joins it.</summary>
    public TracedNet? NetOf(TouchPoint point) => Nets.FirstOrDefault(net => net.Points.Contains(point));

    /// <summary>The net under a name, also one of several names; null where there is none.</summary>
    public TracedNet? Named(string name) => Nets.FirstOrDefault(net => net.Name == name) ?? Nets.FirstOrDefault(net => net.Names.Contains(name, StringComparer.Ordinal));

    private static TracedNet Net(List<TouchPoint> points, List<string> names, List<NetLink> links)
    {
        var touched = Groups(points, [.. links.Where(link => link.Grade == NetGrade.Touched)]).Count == 1;
        var named = names.Count > 0 ? names[0] : points.FirstOrDefault(point => point.Spot.Length == 0)?.Text ?? "net of " + points[0].Text;
        return new(named, [.. names], [.. points], touched && points.Count > 1 ? NetGrade.Touched : NetGrade.ByHand, [.. links]);
    }

    /// <summary>Points that hang together, each group and the groups in the order of <paramref name="points"/>.</summary>
    private static List<List<TouchPoint>> Groups(List<TouchPoint> points, IReadOnlyList<NetLink> links)
    {
        var parent = points.ToDictionary(point => point);
        TouchPoint Root(TouchPoint point)
        {
            while (parent[point] != point) point = parent[point] = parent[parent[point]];
            return point;
        }

        foreach (var link in links) parent[Root(link.B)] = Root(link.A);
        return [.. points.GroupBy(Root).Select(group => group.ToList())];
    }

    private static IEnumerable<NetContradiction> Fights(TracedNet net, IReadOnlyList<NetLink> aparts, IReadOnlyList<Sighting<NetDrawn>> drawn)
    {
        foreach (var apart in aparts.Where(link => net.Points.Contains(link.A) && net.Points.Contains(link.B)))
        {
            // Specimens may differ: one with a broken track is no quarrel with one without.
            var links = net.Links.Where(link => link.Specimen.Length == 0 || apart.Specimen.Length == 0 || link.Specimen == apart.Specimen).ToList();
            var path = NetPath.Shortest(links, apart.A, apart.B);
            // A beeper that is silent above 10 Ω is no quarrel with a chain that may be 40 Ω long; another chain may be shorter in ohms.
            if (path.Sum(link => link.Ohm) > apart.Ohm) path = NetPath.Least(links, apart.A, apart.B);
            if (path.Count == 0 || path.Sum(link => link.Ohm) > apart.Ohm || path.Select(link => link.Specimen).Where(name => name.Length > 0).Distinct(StringComparer.Ordinal).Count() > 1) continue;
            yield return new(net.Name, Ids(path.Select(link => link.Entry).Append(apart.Entry)), NetSentences.OneAndApart(apart, path), true);
        }

        var here = drawn.Where(each => net.Names.Contains(each.Value.Net, StringComparer.Ordinal)).ToList();
        foreach (var (first, second) in here.Zip(here.Skip(1)))
        {
            var path = NetPath.Shortest(net.Links, first.Value.Points[0], second.Value.Points[0]);
            yield return new(net.Name, Ids(path.Select(link => link.Entry).Append(first.Id).Append(second.Id)), NetSentences.TwoNames(first.Value.Net, second.Value.Net, path), false);
        }
    }

    private static ValueList<EntryId> Ids(IEnumerable<EntryId> ids) => [.. ids.Distinct().Order()];
}
