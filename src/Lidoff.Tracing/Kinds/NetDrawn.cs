using Lidoff.Evidence.Entries;

namespace Lidoff.Tracing.Kinds;

/// <summary>A net as a person settled it: these points are one.</summary>
/// <param name="Net">Its name.</param>
/// <param name="Points">The points on it, at least one.</param>
/// <param name="Why">Reason; empty when none was given.</param>
public sealed record NetDrawn(string Net, ValueList<TouchPoint> Points, string Why);
