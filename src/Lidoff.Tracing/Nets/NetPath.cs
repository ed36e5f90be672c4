using Lidoff.Tracing.Kinds;

namespace Lidoff.Tracing.Nets;

/// <summary>Shortest chains of links, so that a contradiction names no entry that could be left out.</summary>
internal static class NetPath
{
    /// <summary>The fewest links from one point to another; of equally short ones the one whose links come first. Empty when they are one point or apart.</summary>
    public static IReadOnlyList<NetLink> Shortest(IReadOnlyList<NetLink> links, TouchPoint from, TouchPoint to)
    {
        var came = new Dictionary<TouchPoint, NetLink?> { [from] = null };
        var queue = new Queue<TouchPoint>([from]);
        while (queue.TryDequeue(out var at) && at != to)
        {
            foreach (var link in links)
            {
                var other = link.A == at ? link.B : link.B == at ? link.A : null;
                if (other is not null && came.TryAdd(other, link)) queue.Enqueue(other);
            }
        }

        return Back(came, to);
    }

    /// <summary>The links that may be the fewest ohms from one point to another; of equals the fewest links. Empty when they are one point or apart.</summary>
    public static IReadOnlyList<NetLink> Least(IReadOnlyList<NetLink> links, TouchPoint from, TouchPoint to)
    {
        var came = new Dictionary<TouchPoint, NetLink?> { [from] = null };
        var best = new Dictionary<TouchPoint, (double Ohm, int Links)> { [from] = (0, 0) };
        var queue = new PriorityQueue<TouchPoint, (double, int)>([(from, (0, 0))]);
        while (queue.TryDequeue(out var at, out var way) && at != to)
        {
            if (way != best[at]) continue;
            foreach (var link in links)
            {
                var other = link.A == at ? link.B : link.B == at ? link.A : null;
                var (ohm, count) = (way.Item1 + link.Ohm, way.Item2 + 1);
                if (other is null || (best.TryGetValue(other, out var known) && known.CompareTo((ohm, count)) <= 0)) continue;
                (best[other], came[other]) = ((ohm, count), link);
                queue.Enqueue(other, (ohm, count));
            }
        }

        return Back(came, to);
    }

    private static List<NetLink> Back(Dictionary<TouchPoint, NetLink?> came, TouchPoint to)
    {
        var path = new List<NetLink>();
        for (var at = to; came.TryGetValue(at, out var link) && link is not null; at = link.A == at ? link.B : link.A) path.Add(link);
        path.Reverse();
        return path;
    }
}
