namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>An edge as it lies off its track.</summary>
/// <param name="Coefficients">Offset and turn, px (<see cref="EdgeTrack.Basis"/>).</param>
/// <param name="Covariance">Of the coefficients, from the spread of the places along the edge, px².</param>
/// <param name="Support">Share of the profiles whose step lies on it.</param>
/// <param name="BlurPx">Blur of the step, px.</param>
/// <param name="CommonPx">Standard uncertainty that all of the edge shares, px: tone curve, and the shape of the step.</param>
internal sealed record EdgeLine(double[] Coefficients, double[,] Covariance, double Support, double BlurPx, double CommonPx)
{
    /// <summary>How far off the track it lies at a place along, px.</summary>
    public double At(EdgeTrack track, double s)
    {
        var row = new double[Coefficients.Length];
        track.Basis(s, row);
        return EdgeCandidates.Dot(Coefficients, row);
    }

    /// <summary>Standard uncertainty there by the spread along the edge alone, px.</summary>
    public double SpreadAt(EdgeTrack track, double s)
    {
        var row = new double[Coefficients.Length];
        track.Basis(s, row);
        var sum = 0.0;
        for (var i = 0; i < row.Length; i++) for (var j = 0; j < row.Length; j++) sum += row[i] * Covariance[i, j] * row[j];
        return Math.Sqrt(sum);
    }
}
