using Lidoff.Numbers;

namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>
/// Looks for the edge that was meant. Beside a body's outline run its rim, its bevel, its shadow and its pads, and no picture tells which of them
/// a drawing dimensions: where the click says it is, and how much of each shows, give each its weight, and the doubt is that of all of them together.
/// </summary>
internal static class EdgeSearch
{
    // Where the doubt is more than this of the click's own, the click knows as much.
    private const double MostOpen = 0.9;

    // Two fits this close came to one edge, and a parallel step this close is the fitted one, px.
    private const double SameFit = 0.6;
    private const double SameStep = 1;

    // Where steps run beside an edge as near as this, px, more of them may be too close to be told apart within its blur, and the meant one may not show at all:
    // its odds against an edge clicked on the spot that so many of the profiles show. Measured on drawn bodies with rims and bevels; alone, on rendered ones without.
    private const double Beside = 6;
    private const double HiddenBeside = 0.5;
    private const double MissingAlone = 0.001;
    private const double MissingVotes = 0.6;

    // What no line could be fitted through lies where its votes are, within so much, px.
    private const double Unfitted = 0.6;
    private const double Stepped = 0.3;

    // Half of the votes goes to a parallel step of so much, of 255: they are read from the mean of all profiles.
    private const double HalfVote = 4;

    // Edges at less than a twentieth of the likeliest one's odds are not told of.
    private const double Told = 3;

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
        var wide = Math.Min(mostPx, Math.Max(reach, 1 + (3 * clickPx)));
        var band = EdgeBand.Of(field, track, wide + 5, piece, new double[track.Spreads.Length]);
        if (band.Profiles.Length < 4) return new(null, 0, EdgeSentences.TooShort(place));
        var candidates = EdgeCandidates.Find(band, track, wide);
        double[] at = [.. candidates.Select(each => track.Middle(each.Coefficients))];
        var seen = new List<(EdgeLine? Line, double At, double Sd, double Log)>();
        for (var i = 0; i < candidates.Count; i++)
        {
            var (inner, outer) = (double.NegativeInfinity, double.PositiveInfinity);
            for (var k = 0; k < at.Length; k++)
            {
                if (at[k] < at[i]) inner = Math.Max(inner, at[k] - at[i]);
                if (at[k] > at[i]) outer = Math.Min(outer, at[k] - at[i]);
            }

            var line = EdgeLineFit.Of(field, track, candidates[i].Coefficients, piece, inner, outer);
            var coefficients = line?.Coefficients ?? candidates[i].Coefficients;
            var lies = track.Middle(coefficients);
            if (seen.Exists(other => Math.Abs(other.At - lies) < SameFit)) continue;
            seen.Add((line, lies, line is null ? Unfitted : Own(line, track), EdgeCandidates.LogPrior(coefficients, track) + (track.PerVote * candidates[i].Votes)));
        }

        var found = seen.Where(each => each.Line is not null && Math.Abs(each.At) <= reach + 0.5).ToList();
        if (found.Count == 0) return new(null, 0, EdgeSentences.NoEdge(place, reach));
        var best = found.MaxBy(each => each.Log);
        var rivals = EdgeRivals.Of(field, track, best.Line!, piece, wide + Math.Abs(best.At) + 3);
        var (missing, hidden) = rivals.Exists(step => Math.Abs(step.Off) is > SameStep and < Beside) ? (track.MissingBeside, HiddenBeside * best.Line!.BlurPx) : (MissingAlone, 0);
        foreach (var (off, height) in rivals.Where(step => !rivals.Exists(other => EdgeRivals.IsSeam(step, other))))
        {
            var lies = best.At + off;
            if (Math.Abs(lies) > wide + 0.5 || seen.Exists(other => Math.Abs(other.At - lies) < SameStep)) continue;
            seen.Add((null, lies, Stepped, EdgeCandidates.LogPrior(track.Moved(best.Line!.Coefficients, off), track) + (track.PerVote * height / (height + HalfVote))));
        }

        var top = seen.Max(each => each.Log);
        var parts = seen.Select(each => (each.At, Math.Sqrt((each.Sd * each.Sd) + (hidden * hidden)), Elementary.Exp(each.Log - top))).ToList();
        parts.Add((0, track.MiddlePx, missing * Elementary.Exp((track.PerVote * MissingVotes) - top)));
        var mixture = new EdgeMixture(parts);
        var doubt = mixture.Doubt(best.At);
        if (best.Log >= top && doubt <= MostOpen * track.MiddlePx) return new(best.Line, doubt, "");
        double[] likely = [.. seen.Where(each => each.Log > top - Told).Select(each => each.At).Order()];
        return new(null, 0, likely.Length > 1 ? EdgeSentences.Compete(place, likely) : EdgeSentences.NoBetter(place, likely[0]));
    }

    /// <summary>What a fit alone leaves open in its middle, px.</summary>
    private static double Own(EdgeLine line, EdgeTrack track)
    {
        var (spread, common) = (track.Round ? Math.Sqrt(line.Covariance[0, 0]) : line.SpreadAt(track, (track.From + track.To) / 2), track.Common * line.CommonPx);
        return Math.Sqrt((spread * spread) + (common * common));
    }
}
