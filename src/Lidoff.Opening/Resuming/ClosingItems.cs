namespace Lidoff.Opening.Resuming;

/// <summary>What to see to before the bench is left. Common practice, no source; local rules come first.</summary>
public static class ClosingItems
{
    /// <summary>Key of the item that a sighting of the cell can satisfy as well.</summary>
    public const string CellDisconnected = "cell-disconnected";

    /// <summary>Key of the item that says where the cell lies.</summary>
    public const string CellSafe = "cell-safe";

    /// <summary>Key of the item that the pause itself satisfies when it says what was in hand.</summary>
    public const string InHandNoted = "in-hand-noted";

    /// <summary>All of them, what can hurt first.</summary>
    public static IReadOnlyList<ClosingItem> All { get; } =
    [
        new("heat-off", "Irons, hot air, plates and lamps are off and where nothing touches them."),
        new(CellDisconnected, "The cell is disconnected, or it is known why it stays connected."),
        new(CellSafe, "The cell lies where nothing can short, press or warm it, its ends covered, on something that cannot burn."),
        new("supply-off", "Bench supply and adapter are off, and nothing is being charged alone."),
        new("blades-covered", "Blades are covered and put away."),
        new("solvents-closed", "Solvents are closed; wet rags are where local rules want them."),
        new("specimens-labelled", "Every specimen and every loose part lies in a bag or tray that says which it is."),
        new("pictures-in", "The pictures taken are in the dossier."),
        new(InHandNoted, "What was in hand, and what comes next, is written down."),
    ];

    /// <summary>Their keys, in the same order.</summary>
    public static IReadOnlyList<string> Keys { get; } = [.. All.Select(item => item.Key)];
}
