using Lidoff.Numbers;

namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>Looks for the edge that was meant: the candidates of a band, each fitted, weighed by where the click says it is and by how much of it shows.</summary>
internal static class EdgeSearch
{
    // Where the choice between edges leaves more than this of the click's own doubt, the click knows as much.
    private const double MostOpen = 0.6;

    // Less likely ones are not looked at.
    private const double LeastShare = 0.01;

    // Two fits that came to the same place are one edge, px.
    private const double Same = 0.6;

    /// <summary>Looks.</summary>
    /// <param name="field">The picture.</param>
    /// <param name="track">The clicked line.</param>
    /// <param name="clickPx">Standard uncertainty of a click, px.</param>
    /// <param name="mostPx">The search goes no further than this, px, so that it ends before the next thing.</param>
    /// <param name="place">What it is called in a sentence.</param>
    public static EdgeFound Find(PixelField field, EdgeTrack track, double clickPx, double mostPx, string place)
    {
        var length = track.To - track.From;
        var piece = Math.Clamp(length / 60, 3, 8);
        var reach = Math.Min(mostPx, track.Reach);
        var band = EdgeBand.Of(field, track, reach + 5, piece, new double[track.Spreads.Length]);
        if (band.Profiles.Length < 4) return new(null, 0, EdgeSentences.TooShort(place));
        var candidates = EdgeCandidates.Find(band, track, reach);
        var middle = (track.From + track.To) / 2;
        var row = new double[track.Spreads.Length];
        track.Basis(middle, row);
        var at = candidates.Select(each => track.Round ? each.Coefficients[0] : EdgeCandidates.Dot(each.Coefficients, row)).ToArray();
        var fitted = new List<(EdgeLine Line, double At, double Log)>();
        for (var i = 0; i < candidates.Count; i++)
        {
            var (inner, outer) = (double.NegativeInfinity, double.PositiveInfinity);
            for (var k = 0; k < at.Length; k++)
            {
                if (at[k] < at[i]) inner = Math.Max(inner, at[k] - at[i]);
                if (at[k] > at[i]) outer = Math.Min(outer, at[k] - at[i]);
            }

            if (EdgeLineFit.Of(field, track, candidates[i].Coefficients, piece, inner, outer) is not { } line) continue;
            var lies = track.Round ? line.Coefficients[0] : EdgeCandidates.Dot(line.Coefficients, row);
            if (fitted.Exists(other => Math.Abs(other.At - lies) < Same)) continue;
            fitted.Add((line, lies, EdgeCandidates.LogPrior(line.Coefficients, track) + (track.PerVote * candidates[i].Votes)));
        }

        fitted.RemoveAll(each => Math.Abs(each.At) > reach + 0.5);
        if (fitted.Count == 0) return new(null, 0, EdgeSentences.NoEdge(place, reach));
        var top = fitted.Max(each => each.Log);
        var total = fitted.Sum(each => Elementary.Exp(each.Log - top));
        var best = fitted.MaxBy(each => each.Log);
        var (open, others) = (0.0, new List<double>());
        foreach (var other in fitted)
        {
            var share = Elementary.Exp(other.Log - top) / total;
            if (other.Line == best.Line || share < LeastShare) continue;
            open += share * (other.At - best.At) * (other.At - best.At);
            others.Add(other.At);
        }

        open = Math.Sqrt(open);
        return open > MostOpen * clickPx
            ? new(null, open, EdgeSentences.Compete(place, [.. others.Append(best.At).Order()]))
            : new(best.Line, open, "");
    }
}
