using Lidoff.Opening.Cautioning;

namespace Lidoff.Bench.Rooms.Open.Typed;

/// <summary>The words under which acts are typed and offered.</summary>
public static class ActWords
{
    private static readonly (string Word, StepAct Act)[] Words =
        [.. Enum.GetValues<StepAct>().OrderBy(act => act == StepAct.Other).Select(act => (act.ToString().ToLowerInvariant(), act))];

    /// <summary>All words, "other" last.</summary>
    public static IReadOnlyList<string> All { get; } = [.. Words.Select(pair => pair.Word)];

    /// <summary>The act's word.</summary>
    public static string Word(StepAct act) => act.ToString().ToLowerInvariant();

    /// <summary>The act of a word in any case; null when there is none.</summary>
    public static StepAct? Find(string word) =>
        Words.Where(pair => string.Equals(pair.Word, word, StringComparison.OrdinalIgnoreCase)).Select(pair => (StepAct?)pair.Act).FirstOrDefault();
}
