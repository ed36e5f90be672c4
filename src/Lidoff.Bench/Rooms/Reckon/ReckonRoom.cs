using Lidoff.Bench.Showing;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Rooms.Reckon;

/// <summary>Numbers with their doubt.</summary>
public sealed class ReckonRoom : IRoom
{
    /// <inheritdoc/>
    public string Name => "reckon";

    /// <inheritdoc/>
    public string Title => "Reckon";

    /// <inheritdoc/>
    public int Order => 5;

    /// <inheritdoc/>
    public string Tally(OpenDossier dossier) => Count.Of(ReckoningNames.Of(dossier.Session.View).Count, "number");
}
