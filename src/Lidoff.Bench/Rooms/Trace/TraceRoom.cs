using Lidoff.Bench.Showing;
using Lidoff.Telling.Dossiers;
using Lidoff.Tracing.Kinds;

namespace Lidoff.Bench.Rooms.Trace;

/// <summary>Touches, nets, rails, buses.</summary>
public sealed class TraceRoom : IRoom
{
    /// <inheritdoc/>
    public string Name => "trace";

    /// <inheritdoc/>
    public string Title => "Trace";

    /// <inheritdoc/>
    public int Order => 4;

    /// <inheritdoc/>
    public string Tally(OpenDossier dossier) => Count.Of(dossier.Session.View.Live<TouchSighting>().Count, "touch", "touches");
}
