namespace Lidoff.Evidence.Entries;

/// <summary>
/// One line of the journal as read back from its stored bytes, which are kept as they were written and never re-serialised.
/// The payload hangs on the entry by its hash, so that it can be erased while the chain still verifies.
/// </summary>
/// <param name="Id">Hash of the stored bytes.</param>
/// <param name="Dossier">Short name of the dossier; empty for what concerns the whole workspace.</param>
/// <param name="Kind">Name of the evidence kind; kinds this program does not know are kept and shown.</param>
/// <param name="KindVersion">Version of the kind that wrote the payload, from 1.</param>
/// <param name="Chain">The writer's chain: one for each writing process and dossier, 32 hex digits.</param>
/// <param name="Seq">Place in the chain, from 1.</param>
/// <param name="Previous">The entry before it in the chain; null for the first.</param>
/// <param name="Heads">Newest entries of the dossier's other chains that the writer had seen and that no earlier link of its own
/// covers, in id order.</param>
/// <param name="Targets">Entries this one speaks about, in the order given.</param>
/// <param name="At">When it was written, UTC.</param>
/// <param name="By">Who wrote it; hostile text.</param>
/// <param name="PayloadHash">SHA-256 of the payload bytes, hex.</param>
public sealed record Entry(
    EntryId Id,
    string Dossier,
    string Kind,
    int KindVersion,
    string Chain,
    long Seq,
    EntryId? Previous,
    IReadOnlyList<EntryId> Heads,
    IReadOnlyList<EntryId> Targets,
    DateTimeOffset At,
    string By,
    string PayloadHash)
{
    /// <summary>SHA-256 of the stored files the entry brings with it, hex, in the order given; they travel with it whatever its kind.</summary>
    public IReadOnlyList<string> Files { get; init; } = [];

    /// <summary>Format of the stored bytes; one above <see cref="EntryCodec.Format"/> was written by a newer program.</summary>
    public int Format { get; init; } = EntryCodec.Format;
}
