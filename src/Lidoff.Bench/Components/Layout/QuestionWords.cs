using Lidoff.Weighing.Questions;

namespace Lidoff.Bench.Components.Layout;

/// <summary>How a question stands, in words and as a class of the style sheet.</summary>
internal static class QuestionWords
{
    /// <summary>In words.</summary>
    public static string State(QuestionState state) => state switch
    {
        QuestionState.Answered => "answered",
        QuestionState.Quarrel => "sources disagree",
        QuestionState.Missing => "something is missing",
        _ => "open",
    };

    /// <summary>As a class.</summary>
    public static string Class(QuestionState state) => state switch
    {
        QuestionState.Answered => "settled",
        QuestionState.Quarrel => "bad",
        _ => "open",
    };
}
