namespace Lidoff.Bench.Data;

/// <summary>
/// A file that is stored for good: its hash, what it was recognised as in words, the entry that took it in, what is wrong with it in a
/// sentence (empty: nothing found), and where the very same bytes were before (empty: new; otherwise a sentence, and nothing was added).
/// </summary>
public sealed record AddedFile(string Sha256, string Kind, string Entry, string Trouble = "", string Already = "");
