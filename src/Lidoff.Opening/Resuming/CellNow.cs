using Lidoff.Evidence.Entries;

namespace Lidoff.Opening.Resuming;

/// <summary>Whether a specimen's cell is connected, as far as anybody noted.</summary>
/// <param name="Specimen">The specimen; empty where none was named.</param>
/// <param name="Connected">True or false as last noted; null where nobody noted it, or not since a step that may have changed it.</param>
/// <param name="Damaged">Swollen, dented, wet or hot, as last noted; null where nobody looked.</param>
/// <param name="Since">Words of the newest step that may have changed it and after which nobody noted it; empty where there is none.</param>
/// <param name="Say">The same as a sentence.</param>
/// <param name="Entry">The newest entry that says so; null where there is none.</param>
/// <param name="At">When that was noted, UTC.</param>
public sealed record CellNow(string Specimen, bool? Connected, bool? Damaged, string Since, string Say, EntryId? Entry, DateTimeOffset? At);
