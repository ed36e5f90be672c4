using Lidoff.Weighing.Questions;

namespace Lidoff.Bench.Working;

/// <summary>A question of the board written again, so that one thing of it changes and the rest stays.</summary>
internal static class QuestionLines
{
    /// <summary>With what it is tied to, each once, and the answer in words (empty for none).</summary>
    public static Line Tied(QuestionAsked asked, IEnumerable<string> ties, string answer) =>
        Again(asked).Set("ties", [.. ties.Distinct(StringComparer.Ordinal)]).Set("answer", answer);

    /// <summary>Off the board.</summary>
    public static Line Dropped(QuestionAsked asked) => Again(asked).Set("dropped", true);

    private static Line Again(QuestionAsked asked) =>
        Line.Of("question").Set("question", asked.Question).Set("why", asked.Why).Set("from", asked.From).Set("order", asked.Order).Set("text", asked.Text);
}
