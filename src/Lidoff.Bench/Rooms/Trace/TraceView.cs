using Lidoff.Evidence.Entries;
using Lidoff.Telling.Dossiers;
using Lidoff.Tracing.Kinds;

namespace Lidoff.Bench.Rooms.Trace;

/// <summary>What the room Trace shows.</summary>
/// <param name="Touches">What was probed, in order.</param>
public sealed record TraceView(ValueList<TouchSighting> Touches)
{
    /// <summary>The room as the dossier stands.</summary>
    public static TraceView Of(OpenDossier dossier) => new([.. dossier.Session.View.Live<TouchSighting>().Select(touch => touch.Value)]);
}
