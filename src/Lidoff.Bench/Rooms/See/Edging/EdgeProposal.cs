using System.Globalization;
using Lidoff.Bench.Rooms.See.Viewing;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring.Edges;

namespace Lidoff.Bench.Rooms.See.Edging;

/// <summary>Edges that a machine found near what was just clicked: drawn over it, and taken over by whoever stores it. One of the three is there.</summary>
/// <param name="Length">A length's ends.</param>
/// <param name="Body">A body's sides.</param>
/// <param name="Circle">A circle.</param>
public sealed record EdgeProposal(FittedLength? Length, FittedBody? Body, FittedCircle? Circle)
{
    /// <summary>The tools whose places can be fitted.</summary>
    public static bool Fits(string tool, int places) => (tool, places) is ("length", 2) or ("body", 3) or ("shape", >= 3);

    /// <summary>Looks near the places of a tool that fits.</summary>
    public static EdgeProposal Of(PictureEdges edges, string tool, IReadOnlyList<PicturePoint> points, double clickPx) => tool switch
    {
        "length" => new(edges.Length(points[0], points[1], clickPx), null, null),
        "body" => new(null, edges.Body(points, clickPx), null),
        _ => new(null, null, edges.Circle(points, clickPx)),
    };

    /// <summary>True where an edge was found.</summary>
    public bool OnEdge => Length?.OnEdge ?? Body?.OnEdge ?? Circle?.OnEdge ?? false;

    /// <summary>How far each end or side was moved; empty where none was.</summary>
    public string Moved => string.Join(" · ", Parts().Where(part => part.Trouble.Length == 0).Select(part => SeeSentences.EdgeMoved(part.Name, part.ShiftPx, part.UPx)));

    /// <summary>Why what stayed did, a sentence each.</summary>
    public IReadOnlyList<string> Stayed => [.. Parts().Select(part => part.Trouble).Where(trouble => trouble.Length > 0)];

    /// <summary>What is drawn over the clicked places.</summary>
    public ValueList<StageLine> Lines()
    {
        if (!OnEdge) return [];
        if (Length is { } length) return [Line(0, length.From.Point, length.To.Point)];
        var around = Body is { } body ? body.Corners : Circle!.Points;
        return [.. around.Select((point, i) => Line(i, point, around[(i + 1) % around.Count]))];
    }

    private IEnumerable<(string Name, double ShiftPx, double UPx, string Trouble)> Parts()
    {
        if (Length is { } length) return [(EdgeSentences.From, length.From.ShiftPx, length.From.UPx, length.From.Trouble), (EdgeSentences.To, length.To.ShiftPx, length.To.UPx, length.To.Trouble)];
        if (Body is { } body) return body.Sides.Select((side, i) => (EdgeSentences.Side(i), side.OffsetPx, side.UPx, side.Trouble));
        return [(EdgeSentences.Circle, Circle!.ShiftPx, Circle.URadiusPx, Circle.Trouble)];
    }

    private static StageLine Line(int at, PicturePoint from, PicturePoint to) => new("edge:" + at.ToString(CultureInfo.InvariantCulture), from.X, from.Y, to.X, to.Y, "edge", "", false);
}
