using Lidoff.Evidence.Registering;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Rooms;

/// <summary>A room of the workbench, found by type: its place in the strip. Its page stands at <c>/dossiers/NAME/room</c>.</summary>
public interface IRoom : INamed
{
    /// <summary>Its name as the strip shows it: "See".</summary>
    string Title { get; }

    /// <summary>Place in the strip, from 1; also the key that leads there.</summary>
    int Order { get; }

    /// <summary>What it holds today in two or three words: "48 pictures".</summary>
    string Tally(OpenDossier dossier);
}
