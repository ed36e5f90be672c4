using Lidoff.Evidence.Entries;
using Lidoff.Telling.Dossiers;
using Lidoff.Telling.Drawing.Diagrams;
using Lidoff.Weighing.Blocks;

namespace Lidoff.Bench.Rooms.Trace;

/// <summary>The drawings of the room Trace: the supply and the blocks, where there is something to draw.</summary>
/// <param name="Diagrams">In reading order.</param>
public sealed record DiagramsView(ValueList<DiagramRow> Diagrams)
{
    /// <summary>The drawings as the dossier stands.</summary>
    public static DiagramsView Of(OpenDossier dossier)
    {
        var view = dossier.Session.View;
        // A block is called by the part that sits there once that is known.
        string Part(string spot) => dossier.Model.Value("part:" + spot) is { Missing: null, Name: { } name } ? name : "";
        var supply = SupplyTree.Of(view);
        return new([.. Rows(DiagramDrawing.Supply(supply), supply.Remarks, DiagramDrawing.Blocks(BlockDiagram.Of(view, Part)))]);
    }

    private static IEnumerable<DiagramRow> Rows(DrawnDiagram? supply, ValueList<string> remarks, DrawnDiagram? blocks)
    {
        if (supply is not null) yield return Row("supply", "Supply", supply, remarks);
        if (blocks is not null) yield return Row("blocks", "Blocks", blocks, []);
    }

    private static DiagramRow Row(string name, string title, DrawnDiagram diagram, ValueList<string> remarks) =>
        new(name, title, diagram.Drawing.Width, diagram.Drawing.Height, diagram.Drawing.Body, diagram.Alternative, remarks);
}
