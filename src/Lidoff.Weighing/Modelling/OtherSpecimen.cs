using Lidoff.Evidence.Entries;

namespace Lidoff.Weighing.Modelling;

/// <summary>What the mark reads on a specimen whose sightings do not count for a spot's belief.</summary>
/// <param name="Specimen">The specimen.</param>
/// <param name="Mark">Its newest mark, lines with '/' between.</param>
/// <param name="Entry">The mark's entry.</param>
/// <param name="ByMachine">True where no person read it.</param>
public sealed record OtherSpecimen(string Specimen, string Mark, EntryId Entry, bool ByMachine = false)
{
    /// <summary>The mark, and whose word it is where that is no person's.</summary>
    public string Told => ByMachine ? $"{Mark} ({WeighingSentences.ReadByMachine})" : Mark;
}
