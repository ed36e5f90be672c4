using Lidoff.Evidence.Entries;
using Lidoff.Naming.Asking;

namespace Lidoff.Weighing.Modelling;

/// <summary>What all rooms know of the part at one spot, as the naming engine takes it, and the entries each piece came from.</summary>
/// <param name="Spot">The spot.</param>
/// <param name="Evidence">The evidence.</param>
/// <param name="Told">Each piece of evidence in words, with the entries it came from; two equal ones mean equal evidence.</param>
/// <param name="Specimen">The specimen it was seen on; empty where none was named.</param>
/// <param name="Elsewhere">Marks of other specimens that read otherwise there and do not count.</param>
/// <param name="Machine">What a machine read there, on what counts; null where none did.</param>
public sealed record SpotEvidence(string Spot, NameEvidence Evidence, ValueList<ToldEvidence> Told, string Specimen, ValueList<OtherSpecimen> Elsewhere, MachineReading? Machine = null);
