namespace Lidoff.Evidence.Folding;

/// <summary>Names of the three kinds that speak about other entries. Their targets stand in the entry, their reason in the payload.</summary>
public static class ControlKinds
{
    /// <summary>Targets: the entry whose place is taken, the entry that takes it.</summary>
    public const string Supersede = "supersede";

    /// <summary>Targets: the entries taken back. Undoing an undo brings back what it took.</summary>
    public const string Undo = "undo";

    /// <summary>Targets: the entries whose payload is removed for good.</summary>
    public const string Erase = "erase";

    /// <summary>The version of all three that this program understands; what a later one means it cannot know.</summary>
    public const int Version = 1;
}
