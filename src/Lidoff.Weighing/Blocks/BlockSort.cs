namespace Lidoff.Weighing.Blocks;

/// <summary>What a block stands for.</summary>
public enum BlockSort
{
    /// <summary>A part at a spot.</summary>
    Part,

    /// <summary>A bus that several parts hang on.</summary>
    Bus,

    /// <summary>A rail of which nobody knows what makes it.</summary>
    Rail,
}
