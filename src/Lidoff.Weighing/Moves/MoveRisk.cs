namespace Lidoff.Weighing.Moves;

/// <summary>What a move may cost beside its minutes.</summary>
public enum MoveRisk
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>It may damage something.</summary>
    MayDamage,

    /// <summary>It destroys something.</summary>
    Destroys,
}
