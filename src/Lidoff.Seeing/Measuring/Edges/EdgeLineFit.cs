using Lidoff.Numbers.Spreads;

namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>Fits one edge of a band: a blurred step in each profile, and through their places a line that leads, marks and dirt do not pull.</summary>
internal static class EdgeLineFit
{
    // A lens blurs light, and a file holds values beyond a tone curve: where the one is half way between dark and bright the other is not, by up
    // to half a pixel. How much of a curve lies between them is not known (none in a drawn picture, sRGB's 2.2 or so and more in a camera's,
    // less where it was sharpened): evenly anything from none to this exponent.
    private const double MostTone = 2.4;
    private static readonly float[] Light = StepFit.ToLight(MostTone);

    // Tukey's biweight with 95 % efficiency on normal places.
    private const double Tukey = 4.685;

    // Places found in single profiles are never better than this, px: pixels are rounded to whole steps.
    private const double Finest = 0.02;

    // Scatter of neighbouring places hangs together over so many pieces at most.
    private const int Lags = 4;

    /// <summary>Fits it, or null where too few profiles have their step there.</summary>
    /// <param name="field">The picture.</param>
    /// <param name="track">The clicked line.</param>
    /// <param name="start">Coefficients of about where it lies.</param>
    /// <param name="piece">Length of a piece, px.</param>
    /// <param name="inner">Next edge on the inner side, px across from this one, or minus infinity.</param>
    /// <param name="outer">The same on the outer side.</param>
    public static EdgeLine? Of(PixelField field, EdgeTrack track, double[] start, double piece, double inner, double outer)
    {
        var shift = start;
        EdgeLine? line = null;
        // The second time the band follows the line itself, so that its turn blurs nothing.
        for (var round = 0; round < 2; round++)
        {
            var band = EdgeBand.Of(field, track, 8, piece, shift);
            if (band.Profiles.Length < 4 || Once(band, track, inner, outer) is not { } once) return null;
            line = once with { Coefficients = [.. once.Coefficients.Zip(shift, (a, b) => a + b)] };
            shift = line.Coefficients;
        }

        return line;
    }

    private static EdgeLine? Once(EdgeBand band, EdgeTrack track, double inner, double outer)
    {
        float[][] light = [.. band.Profiles.Select(profile => Array.ConvertAll(profile, value => StepFit.Read(Light, value)))];
        if (Reading.Of(band.Profiles, band, inner, outer) is not { } file || Reading.Of(light, band, inner, outer) is not { } lit) return null;
        var (rows, places, tones, shapes, misfits) = (new List<double[]>(), new List<double>(), new List<double>(), new List<double>(), new List<double>());
        var least = Math.Max(4, 4 * band.Noise);
        for (var i = 0; i < band.Profiles.Length; i++)
        {
            if (file.Fit(i, 1) is not { } step || Math.Abs(step.Step) < least || lit.Fit(i, 1) is not { } other) continue;
            var row = new double[track.Spreads.Length];
            track.Basis(band.Places[i], row);
            rows.Add(row);
            places.Add((step.Place + other.Place) / 2);
            tones.Add(Math.Abs(step.Place - other.Place));
            // What the step leaves over, beyond noise, over its steepness: so far may it lie elsewhere.
            misfits.Add(Math.Sqrt(Math.Max(0, (step.Misfit * step.Misfit) - (band.Noise * band.Noise))) * Math.Sqrt(2 * Math.PI) * file.Blur / Math.Abs(step.Step));
            if (file.Fit(i, 0.6) is { } narrow) shapes.Add(narrow.Place - step.Place);
        }

        var n = track.Spreads.Length;
        if (rows.Count < n + 2) return null;
        var coefficients = new double[n];
        coefficients[0] = Median(places);
        if (!track.Round && track.Spreads.Length == 2 && rows[0][0] != 1) coefficients[1] = coefficients[0];
        var weights = new double[rows.Count];
        var scale = Finest;
        for (var round = 0; round < 30; round++)
        {
            var rests = Rests(rows, places, coefficients);
            scale = Math.Max(Finest, 1.4826 * Median([.. rests.Select(Math.Abs)]));
            for (var i = 0; i < weights.Length; i++)
            {
                var share = rests[i] / (Tukey * scale);
                weights[i] = Math.Abs(share) >= 1 ? 0 : (1 - (share * share)) * (1 - (share * share));
            }

            if (Solve(rows, places, weights) is not { } solved) return null;
            coefficients = solved;
        }

        var inliers = weights.Count(weight => weight > 0.1);
        var support = inliers / (double)band.Profiles.Length;
        if (support < track.LeastSupport || inliers < n + 2) return null;
        var rest = Rests(rows, places, coefficients);
        if (Covariance(rows, rest, weights, inliers) is not { } covariance) return null;
        var tone = Median(tones);
        var shape = shapes.Count > 0 ? Median(shapes) : 0;
        var (misfit, rim) = (Median(misfits), track.Hidden * Math.Max(1, file.Blur));
        return new(coefficients, covariance, support, file.Blur, Math.Sqrt((tone * tone / 12) + (shape * shape / 3) + (misfit * misfit) + (rim * rim)));
    }

    private static double[] Rests(List<double[]> rows, List<double> places, double[] coefficients) => [.. rows.Select((row, i) => places[i] - EdgeCandidates.Dot(row, coefficients))];

    private static double[]? Solve(List<double[]> rows, List<double> places, double[] weights)
    {
        var n = rows[0].Length;
        var right = new double[n];
        for (var i = 0; i < rows.Count; i++) for (var j = 0; j < n; j++) right[j] += weights[i] * rows[i][j] * places[i];
        return PositiveMatrix.Factor(Normal(rows, weights)) is { } factor ? PositiveMatrix.Solve(factor, right) : null;
    }

    private static double[,] Normal(List<double[]> rows, double[] weights)
    {
        var n = rows[0].Length;
        var normal = new double[n, n];
        for (var i = 0; i < rows.Count; i++) for (var j = 0; j < n; j++) for (var k = 0; k < n; k++) normal[j, k] += weights[i] * rows[i][j] * rows[i][k];
        return normal;
    }

    /// <summary>
    /// From the spread of the places themselves, with what neighbours share (Bartlett's weights), and Student's t for few of them.
    /// </summary>
    private static double[,]? Covariance(List<double[]> rows, double[] rests, double[] weights, int inliers)
    {
        var n = rows[0].Length;
        if (PositiveMatrix.Factor(Normal(rows, weights)) is not { } factor) return null;
        var bread = PositiveMatrix.Inverse(factor);
        var meat = new double[n, n];
        var (own, shared) = (0.0, new double[Lags + 1]);
        for (var i = 0; i < rows.Count; i++)
        {
            var pull = weights[i] * rests[i];
            own += pull * pull;
            for (var lag = 1; lag <= Lags && i + lag < rows.Count; lag++) shared[lag] += pull * weights[i + lag] * rests[i + lag];
            for (var j = 0; j < n; j++) for (var k = 0; k < n; k++) meat[j, k] += pull * pull * rows[i][j] * rows[i][k];
        }

        var together = 1.0;
        for (var lag = 1; lag <= Lags && own > 0; lag++) together += 2 * (1 - (lag / (Lags + 1.0))) * shared[lag] / own;
        var few = inliers / (double)(inliers - n);
        var t = StudentT.Quantile(0.95, inliers - n) / NormalDistribution.Quantile(0.95);
        var factorAll = Math.Max(1, together) * few * t * t;
        var covariance = new double[n, n];
        for (var j = 0; j < n; j++)
        {
            for (var k = 0; k < n; k++)
            {
                var sum = 0.0;
                for (var a = 0; a < n; a++) for (var b = 0; b < n; b++) sum += bread[j, a] * meat[a, b] * bread[b, k];
                covariance[j, k] = sum * factorAll;
            }
        }

        return covariance;
    }

    internal static double Median(IReadOnlyCollection<double> values)
    {
        var sorted = values.ToArray();
        Array.Sort(sorted);
        return sorted.Length % 2 == 1 ? sorted[sorted.Length / 2] : (sorted[(sorted.Length / 2) - 1] + sorted[sorted.Length / 2]) / 2;
    }
}
