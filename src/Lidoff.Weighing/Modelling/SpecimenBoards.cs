using Lidoff.Evidence.Entries;

namespace Lidoff.Weighing.Modelling;

/// <summary>The boards of one specimen with their pictures laid on them.</summary>
/// <param name="Specimen">The specimen; empty where none was named.</param>
/// <param name="Boards">One for each set of pictures that share landmarks.</param>
/// <param name="Problems">Sentences about landmarks that lead nowhere.</param>
public sealed record SpecimenBoards(string Specimen, ValueList<PictureBoard> Boards, ValueList<string> Problems);
