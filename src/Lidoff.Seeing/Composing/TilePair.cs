namespace Lidoff.Seeing.Composing;

/// <summary>
/// How one tile lies on another. <see cref="Map"/> takes places of the second to the first, both on their sheets; <see cref="Others"/> are
/// other places where it fits too; the pair is open where the overlap itself does not tell them apart.
/// </summary>
internal sealed record TilePair(int First, int Second, Similarity Map, IReadOnlyList<PointMatch> Matches, double Rms, IReadOnlyList<Similarity> Others, bool Open)
{
    /// <summary>How far the nearest other place lies, px of the sheets.</summary>
    public double RivalAway(double x, double y) => Others.Count == 0 ? 0 : Others.Min(other => Away(other, x, y));

    private double Away(Similarity other, double x, double y)
    {
        var ((a, b), (c, d)) = (Map.Apply(x, y), other.Apply(x, y));
        return Math.Sqrt(((a - c) * (a - c)) + ((b - d) * (b - d)));
    }
}
