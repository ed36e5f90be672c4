using Lidoff.Numbers.Failing;

namespace Lidoff.Bench.Components.Parts;

/// <summary>What the questions' part of the overview says.</summary>
public static class QuestionSentences
{
    /// <summary>No words typed as an answer.</summary>
    public static Fault NoAnswer { get; } = new("answer", "a few words", "Type the answer in words first.");
}
