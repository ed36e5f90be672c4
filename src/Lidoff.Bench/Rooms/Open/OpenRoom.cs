using Lidoff.Bench.Showing;
using Lidoff.Opening.Kinds;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Rooms.Open;

/// <summary>Specimens, how it behaved, steps and what they destroyed.</summary>
public sealed class OpenRoom : IRoom
{
    /// <inheritdoc/>
    public string Name => "open";

    /// <inheritdoc/>
    public string Title => "Open";

    /// <inheritdoc/>
    public int Order => 1;

    /// <inheritdoc/>
    public string Tally(OpenDossier dossier) => Count.Of(dossier.Session.View.Live<StepSighting>().Count, "step");
}
