using Lidoff.Evidence.Entries;
using Lidoff.Tracing.Kinds;

namespace Lidoff.Tracing.Nets;

/// <summary>Points that are one net as far as is known.</summary>
/// <param name="Name">Its name: as drawn, else of a named point on it, else after its first point.</param>
/// <param name="Names">Every name drawn for it, in natural order; two of them are a contradiction as well.</param>
/// <param name="Points">Its points in natural order.</param>
/// <param name="Grade">Touched when touches alone join all of its points.</param>
/// <param name="Links">What joins them, in fold order.</param>
/// <param name="P">How probable it is that the net is whole and right; null while that is not reckoned.</param>
public sealed record TracedNet(string Name, ValueList<string> Names, ValueList<TouchPoint> Points, NetGrade Grade, ValueList<NetLink> Links, double? P = null)
{
    /// <summary>The spots with a pin on it, each once, in natural order.</summary>
    public IReadOnlyList<string> Spots => [.. Points.Select(point => point.Spot).Where(spot => spot.Length > 0).Distinct(StringComparer.Ordinal).Order(NaturalOrder.Instance)];
}
