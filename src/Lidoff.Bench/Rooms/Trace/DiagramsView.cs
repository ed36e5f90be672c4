using Lidoff.Evidence.Entries;
using Lidoff.Telling.Dossiers;
using Lidoff.Telling.Drawing.Diagrams;

namespace Lidoff.Bench.Rooms.Trace;

/// <summary>The drawings of the room Trace: the supply and the blocks, where there is something to draw.</summary>
/// <param name="Diagrams">In reading order.</param>
public sealed record DiagramsView(ValueList<DiagramRow> Diagrams)
{
    /// <summary>The drawings as the dossier stands.</summary>
    public static DiagramsView Of(OpenDossier dossier) => new([.. DossierDiagrams.Of(dossier.Session.View, dossier.Model).Select(each =>
        new DiagramRow(each.Name, each.Title, each.Drawn.Drawing.Width, each.Drawn.Drawing.Height, each.Drawn.Drawing.Body, each.Drawn.Alternative, each.Remarks))]);
}
