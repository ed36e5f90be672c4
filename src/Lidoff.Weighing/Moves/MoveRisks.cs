namespace Lidoff.Weighing.Moves;

/// <summary>Risks in the words of the contracts.</summary>
public static class MoveRisks
{
    /// <summary>none, may damage or destroys.</summary>
    public static string Word(MoveRisk risk) => risk switch
    {
        MoveRisk.None => "none",
        MoveRisk.MayDamage => "may damage",
        _ => "destroys",
    };

    /// <summary>The risk under a word; an unknown word is taken for the worst.</summary>
    internal static MoveRisk Of(string word) => word switch
    {
        "none" => MoveRisk.None,
        "may damage" => MoveRisk.MayDamage,
        _ => MoveRisk.Destroys,
    };
}
