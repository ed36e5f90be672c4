namespace Lidoff.Seeing.Measuring.Targets;

/// <summary>What repeats on a target.</summary>
public enum TargetPattern
{
    /// <summary>Dark and light squares; its places are the corners where four of them meet.</summary>
    Checker,

    /// <summary>Round dots or holes in a square grid; its places are their middles.</summary>
    Dots,
}
