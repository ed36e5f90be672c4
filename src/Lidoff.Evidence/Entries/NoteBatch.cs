namespace Lidoff.Evidence.Entries;

/// <summary>What an input of <c>note</c> amounts to.</summary>
/// <param name="Drafts">Drafts of the good lines, in an order in which each comes after those it names; append them as one batch.</param>
/// <param name="Lines">Every line that is not blank, in the input's order.</param>
public sealed record NoteBatch(IReadOnlyList<EntryDraft> Drafts, IReadOnlyList<NoteLine> Lines);
