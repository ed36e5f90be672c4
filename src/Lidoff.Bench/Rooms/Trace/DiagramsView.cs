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
        new DiagramRow(each.Name, each.Title, each.Drawn.Drawing.Width, each.Drawn.Drawing.Height, each.Drawn.Drawing.Body, Steps(each.Drawn.Placed), each.Drawn.Alternative, each.Remarks))]);

    // Columns run along the lines, so that from left to right is from cause to effect; what nothing joins comes last.
    private static ValueList<DiagramStep> Steps(PlacedDiagram placed) =>
    [
        .. placed.Boxes.OrderBy(box => !placed.Links.Any(link => link.Link.From == box.Box.Name || link.Link.To == box.Box.Name)).ThenBy(box => box.X).ThenBy(box => box.Y).Select(box => new DiagramStep(
            box.Box.Name,
            string.Join(", ", box.Box.Words.Where(words => words != box.Box.Name)),
            [.. placed.Links.Where(link => link.Link.From == box.Box.Name).GroupBy(link => (link.Link.Label, link.Link.Style.Contains("guess", StringComparison.Ordinal)))
                .Select(group => (group.Key.Label, group.Key.Item2, (ValueList<string>)[.. group.Select(link => link.Link.To).Distinct(StringComparer.Ordinal).Order(NaturalOrder.Instance)]))])),
    ];
}
