using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Grading;

namespace Lidoff.Weighing.Becauses;

/// <summary>One step of a because: the thing, an entry it rests on, or the raw file below that.</summary>
/// <param name="Sort">Which of them.</param>
/// <param name="Id">Reference of a thing, id of an entry, content hash of a file.</param>
/// <param name="Title">What it is: the thing in words, the entry's kind, the file's name. Hostile text.</param>
/// <param name="Say">What it says: the printed value, the entry's sentence; empty for a file. Hostile text.</param>
/// <param name="Sentences">More of it, a sentence each: how a value came about, its formula, what became of an entry.</param>
/// <param name="Grade">How well a thing is known; null for entries and files.</param>
/// <param name="By">Who noted the entry; empty when nobody in particular. Hostile text.</param>
/// <param name="At">When the entry was noted, UTC; null for things and files.</param>
/// <param name="Rests">What it rests on, in fold order.</param>
public sealed record BecauseNode(
    BecauseSort Sort, string Id, string Title, string Say, ValueList<string> Sentences, Grade? Grade, string By, DateTimeOffset? At, ValueList<BecauseNode> Rests);
