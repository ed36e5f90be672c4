using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Reading.Spots;

namespace Lidoff.Telling.Dossiers;

/// <summary>A mark that can be read: a spot of one specimen with the pictures that show it.</summary>
/// <param name="Spot">What it stands on.</param>
/// <param name="Specimen">Whose; empty where none was named.</param>
/// <param name="Pictures">The pictures, outlined ones first, then the newest.</param>
/// <param name="Faults">Pictures that show it and cannot be opened.</param>
public sealed record SpotToRead(string Spot, string Specimen, ValueList<SpotPicture> Pictures, ValueList<Fault> Faults);
