namespace Lidoff.Evidence.Pictures;

/// <summary>
/// A map fitted through points. <paramref name="Residuals"/> are the distances, in units of the frame it ends in, between
/// where each point was given and where the map puts it, in the order given. <paramref name="Freedom"/> is how many
/// coordinates were given beyond those needed: at 0 the residuals are zero and say nothing.
/// </summary>
public sealed record FittedMap(Projective Map, IReadOnlyList<double> Residuals, int Freedom)
{
    /// <summary>Standard deviation of one given coordinate as the residuals tell it; null at no freedom.</summary>
    public double? CoordinateU
    {
        get
        {
            if (Freedom == 0) return null;
            var sum = 0.0;
            foreach (var r in Residuals) sum += r * r;
            return Math.Sqrt(sum / Freedom);
        }
    }
}
