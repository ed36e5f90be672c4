using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Grading;
using Lidoff.Weighing.Moves;

namespace Lidoff.Weighing.Questions;

/// <summary>A question of the board with its present answer.</summary>
/// <param name="Asked">What was asked.</param>
/// <param name="Entry">The entry that asked it.</param>
/// <param name="State">How it stands.</param>
/// <param name="Answer">The answer in words: one value as it is, several each with what it is; "open" where there is none.</param>
/// <param name="Spread">Interval or rivals, in the same order; empty where there are none.</param>
/// <param name="Grade">The grade of the worst tie; E0 without an answer.</param>
/// <param name="Ties">Each reference by itself.</param>
/// <param name="Missing">What is missing, in sentences.</param>
/// <param name="Quarrels">Sentences of the quarrels that touch it.</param>
/// <param name="Next">The next move for it; null where none is known.</param>
public sealed record BoardQuestion(
    QuestionAsked Asked, EntryId Entry, QuestionState State, string Answer, string Spread, Grade Grade,
    ValueList<TieAnswer> Ties, ValueList<string> Missing, ValueList<string> Quarrels, NextMove? Next);
