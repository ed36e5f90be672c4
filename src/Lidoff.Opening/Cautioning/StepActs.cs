namespace Lidoff.Opening.Cautioning;

/// <summary>The words under which acts are typed.</summary>
internal static class StepActs
{
    /// <summary>Word and act, in the order in which they are offered.</summary>
    public static (string Word, StepAct Value)[] Words { get; } =
        [.. Enum.GetValues<StepAct>().OrderBy(act => act == StepAct.Other).Select(act => (act.ToString().ToLowerInvariant(), act))];
}
