using Lidoff.Numbers;

namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>
/// Lines of a band that many of its profiles step at. Each profile votes with its steps, whichever way they go (beside a lead it is
/// brighter than a body, beside the mask darker); a line counts by the share of profiles that have a step on it.
/// </summary>
internal static class EdgeCandidates
{
    // A step this small, of 255, is no edge of a thing but its grain; and it stands four times above the noise.
    private const double LeastStep = 5;
    private const double AboveNoise = 4;

    // Half of a profile's vote goes to a step of 8, nearly all to one of 60.
    private const double HalfVote = 8;

    // Width of the derivative that finds steps, px, and of the blur that lenses add to it.
    private const double Smooth = 1;
    private const double UsualBlur = 0.8;

    // A vote counts for lines within about this distance, px.
    private const double Near = 0.8;

    // Steps closer to a line than this are its own, px.
    private const double Apart = 1.6;

    // Fewer profiles than a quarter make no line.
    private const double LeastVotes = 0.25;

    private const int Most = 5;

    /// <summary>The lines, strongest first: coefficients on the track, and the share of votes.</summary>
    public static List<(double[] Coefficients, double Votes)> Find(EdgeBand band, EdgeTrack track, double reach)
    {
        var votes = band.Profiles.Select(profile => Steps(profile, band)).ToArray();
        var basis = band.Places.Select(place =>
        {
            var row = new double[track.Spreads.Length];
            track.Basis(place, row);
            return row;
        }).ToArray();
        var grid = Grid(track, reach).Select(each => (Coefficients: each, Prior: 0.02 * LogPrior(each, track))).ToArray();
        var kept = new List<(double[] Coefficients, double Votes)>();
        while (kept.Count < Most)
        {
            var (best, share, rank) = (grid[0].Coefficients, 0.0, double.NegativeInfinity);
            foreach (var (coefficients, prior) in grid)
            {
                var sum = 0.0;
                for (var i = 0; i < votes.Length; i++)
                {
                    var at = Dot(coefficients, basis[i]);
                    var most = 0.0;
                    foreach (var (place, vote) in votes[i])
                    {
                        var off = Math.Abs(place - at) / Near;
                        if (off < 2) most = Math.Max(most, vote * (1 - (off * off / 4)));
                    }

                    sum += most;
                }

                var now = sum / Math.Max(1, votes.Length);
                if (now + prior > rank) (best, share, rank) = (coefficients, now, now + prior);
            }

            if (share < LeastVotes) break;
            kept.Add((best, share));
            // A step speaks for one line only: what lies on this one speaks for no other at another turn.
            for (var i = 0; i < votes.Length; i++)
            {
                var at = Dot(best, basis[i]);
                votes[i].RemoveAll(vote => Math.Abs(vote.Place - at) < Apart);
            }
        }

        return kept;
    }

    /// <summary>How far off the clicks say a line lies: minus half of χ², with room for clicks half as wide again as stated.</summary>
    public static double LogPrior(double[] coefficients, EdgeTrack track)
    {
        var sum = 0.0;
        for (var k = 0; k < coefficients.Length; k++) sum += coefficients[k] / track.Spreads[k] * (coefficients[k] / track.Spreads[k]);
        return -0.5 * sum / 2.25;
    }

    public static double Dot(double[] a, double[] b)
    {
        var sum = 0.0;
        for (var k = 0; k < a.Length; k++) sum += a[k] * b[k];
        return sum;
    }

    private static List<(double Place, double Vote)> Steps(float[] profile, EdgeBand band)
    {
        var side = (int)(3 * Smooth / EdgeBand.Step);
        var slopes = new double[profile.Length];
        var noise = 0.0;
        for (var k = -side; k <= side; k++) noise += Kernel(k) * Kernel(k);
        // Values half a pixel apart are half of them new.
        var floor = Math.Max(LeastStep, AboveNoise * band.Noise * Math.Sqrt(2 * noise) * ToStep);
        for (var i = side; i < profile.Length - side; i++) for (var k = -side; k <= side; k++) slopes[i] += Kernel(k) * profile[i + k];
        var steps = new List<(double, double)>();
        for (var i = side + 1; i < profile.Length - side - 1; i++)
        {
            var (before, here, after) = (Math.Abs(slopes[i - 1]), Math.Abs(slopes[i]), Math.Abs(slopes[i + 1]));
            if (here < before || here <= after || here * ToStep < floor) continue;
            var bend = before - (2 * here) + after;
            var place = (i + (bend < 0 ? 0.5 * (before - after) / bend : 0)) * EdgeBand.Step;
            steps.Add((place - band.Half, here * ToStep / (here * ToStep + HalfVote)));
        }

        return steps;
    }

    // A step of height one under both blurs has this slope at its middle.
    private static readonly double ToStep = Math.Sqrt(2 * Math.PI * ((Smooth * Smooth) + (UsualBlur * UsualBlur)));

    // Derivative of a Gaussian, for values half a pixel apart.
    private static double Kernel(int k)
    {
        var x = k * EdgeBand.Step / Smooth;
        return x * Elementary.Exp(-x * x / 2) / (Math.Sqrt(2 * Math.PI) * Smooth * Smooth) * EdgeBand.Step;
    }

    // Every combination of coefficients within reach of the clicks, half a pixel apart, a pixel in what is less well seen.
    private static IEnumerable<double[]> Grid(EdgeTrack track, double reach)
    {
        var steps = track.Spreads.Select((spread, k) =>
        {
            var most = k == 0 ? reach : Math.Min(reach, 3 * spread);
            var step = track.Round && k > 0 ? 0.8 : 0.5;
            var each = Math.Max(1, (int)Math.Ceiling(most / step));
            return Enumerable.Range(-each, (2 * each) + 1).Select(i => most * i / each).ToArray();
        }).ToArray();
        foreach (var a in steps[0])
        {
            foreach (var b in steps[1])
            {
                if (steps.Length == 2) yield return [a, b];
                else foreach (var c in steps[2]) yield return [a, b, c];
            }
        }
    }
}
