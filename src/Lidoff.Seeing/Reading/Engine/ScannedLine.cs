using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Reading.Lattices;

namespace Lidoff.Seeing.Reading.Engine;

/// <summary>A line as a picture shows it: its outline there and what the reader said along it.</summary>
/// <param name="Outline">Outline in the picture, its width along the text.</param>
/// <param name="Lattice">The reader's answer.</param>
public sealed record ScannedLine(PictureRegion Outline, CtcLattice Lattice);
