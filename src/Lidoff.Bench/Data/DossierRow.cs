namespace Lidoff.Bench.Data;

/// <summary>A dossier in the list of dossiers.</summary>
/// <param name="Name">Short name; stands in the address.</param>
/// <param name="Title">What it is about, in words; empty where nobody said.</param>
/// <param name="Pictures">Number of pictures.</param>
/// <param name="Spots">Number of spots.</param>
/// <param name="Entries">Number of entries of any kind.</param>
public sealed record DossierRow(string Name, string Title, int Pictures, int Spots, int Entries);
