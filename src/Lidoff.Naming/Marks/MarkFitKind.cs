namespace Lidoff.Naming.Marks;

/// <summary>How much of what may stand on a part stands in what was read.</summary>
public enum MarkFitKind
{
    /// <summary>All of it, as a line of its own.</summary>
    Whole,

    /// <summary>All of it, at the beginning of a line that goes on.</summary>
    Begins,

    /// <summary>All of it, within a line.</summary>
    Holds,

    /// <summary>Some of its characters, in order.</summary>
    Part,
}
