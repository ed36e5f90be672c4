using Lidoff.Evidence.Entries;

namespace Lidoff.Weighing.Modelling;

/// <summary>What the mark reads on a specimen whose sightings do not count for a spot's belief.</summary>
/// <param name="Specimen">The specimen.</param>
/// <param name="Mark">Its newest mark, lines with '/' between.</param>
/// <param name="Entry">The mark's entry.</param>
public sealed record OtherSpecimen(string Specimen, string Mark, EntryId Entry);
