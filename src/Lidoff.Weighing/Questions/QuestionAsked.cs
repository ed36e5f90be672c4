using Lidoff.Evidence.Entries;

namespace Lidoff.Weighing.Questions;

/// <summary>A question the dossier must answer, as a person put it. The newest entry of a name counts.</summary>
/// <param name="Question">Its name, such as Q1.</param>
/// <param name="Text">The question in words; empty when it was only dropped. Hostile text.</param>
/// <param name="Ties">References to what answers it, each once and without braces: <c>reckoning:R1</c>, <c>part:U3</c>, <c>claim:C1</c> …</param>
/// <param name="Why">Why it is asked; empty when not said.</param>
/// <param name="From">Who asks, such as reader; empty for whoever keeps the dossier.</param>
/// <param name="Order">Place on the board, small ones first; null after all that have one.</param>
/// <param name="Dropped">True when it is not asked any more.</param>
/// <param name="Answer">A person's own answer in words; empty when the ties answer.</param>
public sealed record QuestionAsked(
    string Question, string Text, ValueList<string> Ties, string Why, string From, double? Order, bool Dropped, string Answer);
