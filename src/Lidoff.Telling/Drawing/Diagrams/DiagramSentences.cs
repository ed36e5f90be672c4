using System.Globalization;
using Lidoff.Weighing.Blocks;

namespace Lidoff.Telling.Drawing.Diagrams;

/// <summary>Words on and beside diagrams.</summary>
public static class DiagramSentences
{
    /// <summary>How to read a diagram in print.</summary>
    public const string Legend = "A dashed line is a guess; everything else was touched, measured or drawn by a person.";

    /// <summary>A voltage measured at a part.</summary>
    public static string Measured(double v) => string.Create(CultureInfo.InvariantCulture, $"reads {v:0.###} V");

    /// <summary>What stands on a rail's line.</summary>
    public static string Rail(SupplyFeed feed)
    {
        ArgumentNullException.ThrowIfNull(feed);
        return feed.V is { } v ? string.Create(CultureInfo.InvariantCulture, $"{feed.Rail} {v:0.##} V") : feed.Rail;
    }

    /// <summary>The supply in words.</summary>
    public static string Of(SupplyTree tree)
    {
        ArgumentNullException.ThrowIfNull(tree);
        var feeds = tree.Feeds.GroupBy(feed => (feed.From, feed.Rail, feed.Guess))
            .Select(group => $"{group.Key.From} feeds {string.Join(", ", group.Select(feed => feed.To))} over {Rail(group.First())}{(group.Key.Guess ? ", a guess" : "")}");
        return "Supply: " + Joined(feeds, tree.Nodes.Select(node => node.Name));
    }

    /// <summary>The blocks in words.</summary>
    public static string Of(BlockDiagram diagram)
    {
        ArgumentNullException.ThrowIfNull(diagram);
        var lines = diagram.Lines.Select(line => $"{line.From} {(line.Sort == LineSort.Supply ? "feeds" : "is joined with")} {line.To}{(line.Label.Length > 0 ? $" ({line.Label})" : "")}{(line.Guess ? ", a guess" : "")}");
        return "Blocks: " + Joined(lines, diagram.Blocks.Select(block => block.Name));
    }

    private static string Joined(IEnumerable<string> lines, IEnumerable<string> names)
    {
        var said = lines.ToList();
        return said.Count > 0 ? string.Join("; ", said) + "." : string.Join(", ", names) + ", nothing joined yet.";
    }
}
