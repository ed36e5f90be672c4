namespace Lidoff.Weighing.Blocks;

/// <summary>What a line between blocks is.</summary>
public enum LineSort
{
    /// <summary>Power, from the first block to the second.</summary>
    Supply,

    /// <summary>A bus.</summary>
    Bus,

    /// <summary>A net.</summary>
    Net,
}
