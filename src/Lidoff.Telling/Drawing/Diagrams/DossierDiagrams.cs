using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Numbers.Failing;
using Lidoff.Weighing.Blocks;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Telling.Drawing.Diagrams;

/// <summary>The diagrams of a dossier.</summary>
public static class DossierDiagrams
{
    /// <summary>The supply and the blocks, where there is something to draw, in reading order.</summary>
    public static ValueList<DossierDiagram> Of(IDossierView view, DossierModel model)
    {
        Guard.NotNull(model);
        // A block is called by the part that sits there once that is known.
        string Part(string spot) => model.Value("part:" + spot) is { Missing: null, Name: { } name } ? name : "";
        var tree = SupplyTree.Of(view);
        List<DossierDiagram> found = [];
        if (DiagramDrawing.Supply(tree, Part) is { } supply) found.Add(new("supply", "Supply", supply, tree.Remarks));
        if (DiagramDrawing.Blocks(BlockDiagram.Of(view, Part)) is { } blocks) found.Add(new("blocks", "Blocks", blocks, []));
        return [.. found];
    }
}
