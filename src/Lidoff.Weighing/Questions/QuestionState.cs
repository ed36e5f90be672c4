namespace Lidoff.Weighing.Questions;

/// <summary>How a question stands.</summary>
public enum QuestionState
{
    /// <summary>Everything it is tied to has a value.</summary>
    Answered,

    /// <summary>Nothing is tied to it, or a part it asks for is undecided.</summary>
    Open,

    /// <summary>Something it rests on is part of a quarrel.</summary>
    Quarrel,

    /// <summary>Something it is tied to has no value.</summary>
    Missing,
}
