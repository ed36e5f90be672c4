using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
using Lidoff.Weighing.Blocks;

namespace Lidoff.Telling.Drawing.Diagrams;

/// <summary>
/// Draws the supply tree and the block diagram. Colours and dashes come from the style sheet by class: <c>diagram-box</c> with
/// <c>source</c>, <c>converter</c>, <c>load</c>, <c>part</c>, <c>bus</c> or <c>rail</c>; <c>diagram-line</c> with <c>supply</c>, <c>bus</c> or <c>net</c> and
/// <c>guess</c>; <c>diagram-words</c>, <c>diagram-name</c>, <c>diagram-label</c>.
/// </summary>
public static class DiagramDrawing
{
    private const double ArrowLength = 7;
    private const double ArrowHalf = 3.5;

    /// <summary>The supply: sources on the left, loads on the right; null where there is nothing to draw. <paramref name="part"/> names the part at a spot, empty where it is not known; default: none is named.</summary>
    public static DrawnDiagram? Supply(SupplyTree tree, Func<string, string>? part = null)
    {
        Guard.NotNull(tree);
        if (tree.Nodes.Count == 0) return null;
        var boxes = tree.Nodes.Select(node => new DiagramBox(node.Name, Words(node.Name, part?.Invoke(node.Name) ?? "", node.Role, node.V is { } v ? DiagramSentences.Measured(v) : ""), "diagram-box " + node.Sort.ToString().ToLowerInvariant()));
        var links = tree.Feeds.Select(feed => new DiagramLink(feed.From, feed.To, DiagramSentences.Rail(feed), feed.Guess ? "diagram-line supply guess" : "diagram-line supply", true));
        return Draw([.. boxes], [.. links], DiagramSentences.Of(tree));
    }

    /// <summary>The blocks; null where there are none.</summary>
    public static DrawnDiagram? Blocks(BlockDiagram diagram)
    {
        Guard.NotNull(diagram);
        if (diagram.Blocks.Count == 0) return null;
        var boxes = diagram.Blocks.Select(block => new DiagramBox(block.Name, Words(block.Name, block.Part, block.Role), "diagram-box " + block.Sort.ToString().ToLowerInvariant()));
        var links = diagram.Lines.Select(line => new DiagramLink(line.From, line.To, line.Label, $"diagram-line {line.Sort.ToString().ToLowerInvariant()}{(line.Guess ? " guess" : "")}", line.Sort == LineSort.Supply));
        return Draw([.. boxes], [.. links], DiagramSentences.Of(diagram));
    }

    private static DrawnDiagram Draw(IReadOnlyList<DiagramBox> boxes, IReadOnlyList<DiagramLink> links, string alternative)
    {
        var placed = LayeredLayout.Place(boxes, links);
        var pen = new SvgPen(placed.Width, placed.Height);
        foreach (var link in placed.Links) Line(pen, link);
        foreach (var box in placed.Boxes) Box(pen, box);
        // Words last: no line may strike them out. Those of one trunk stand once.
        foreach (var link in placed.Links.DistinctBy(link => (link.Corners[0], link.Link.Label))) Label(pen, link);
        return new(pen.Drawing, alternative, placed);
    }

    private static void Line(SvgPen pen, PlacedLink link)
    {
        foreach (var (from, to) in link.Corners.Zip(link.Corners.Skip(1)).Where(pair => pair.First != pair.Second)) pen.Line(from.X, from.Y, to.X, to.Y, link.Link.Style);
        if (!link.Link.Arrow) return;
        var tip = link.Reversed ? link.Corners[0] : link.Corners[^1];
        var back = link.Reversed ? tip.X + ArrowLength : tip.X - ArrowLength;
        pen.Line(back, tip.Y - ArrowHalf, tip.X, tip.Y, link.Link.Style);
        pen.Line(back, tip.Y + ArrowHalf, tip.X, tip.Y, link.Link.Style);
    }

    private static void Box(SvgPen pen, PlacedBox box)
    {
        pen.Box(box.X, box.Y, box.Width, box.Height, box.Box.Style);
        for (var i = 0; i < box.Lines.Count; i++) pen.Words(box.X + LayeredLayout.Inset, box.Y + LayeredLayout.Baseline(i), box.Lines[i], LayeredLayout.WordSize, i == 0 ? "diagram-name" : "diagram-words");
    }

    private static void Label(SvgPen pen, PlacedLink link)
    {
        if (link.Link.Label.Length == 0) return;
        for (var i = 0; i < link.Label.Count; i++) pen.Words(link.Corners[0].X + 4, link.Corners[0].Y + (i == 0 ? -3 : LayeredLayout.LabelSize + 1), link.Label[i], LayeredLayout.LabelSize, "diagram-label");
    }

    private static ValueList<string> Words(params string[] lines) => [.. lines.Where(line => line.Length > 0)];
}
