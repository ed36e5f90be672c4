namespace Lidoff.Weighing.Blocks;

/// <summary>What a part does in the supply.</summary>
public enum SupplySort
{
    /// <summary>Power comes from it: a cell, a connector, or a rail of which nobody knows what makes it.</summary>
    Source,

    /// <summary>It is fed and feeds.</summary>
    Converter,

    /// <summary>It is fed.</summary>
    Load,
}
