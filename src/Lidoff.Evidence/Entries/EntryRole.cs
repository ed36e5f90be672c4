namespace Lidoff.Evidence.Entries;

/// <summary>Who stands behind an entry.</summary>
public enum EntryRole
{
    /// <summary>A person saw or measured something.</summary>
    Sighting,

    /// <summary>A program read something; carries hashes of program, input and settings.</summary>
    MachineSighting,

    /// <summary>A person settled something.</summary>
    Decision,

    /// <summary>Says something about other entries: supersede, undo, erase.</summary>
    Control,
}
