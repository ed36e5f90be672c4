using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Reading.Lattices;

namespace Lidoff.Seeing.Reading.Engine;

/// <summary>A line that was read.</summary>
/// <param name="Reading">Its readings.</param>
/// <param name="Region">Its outline in the picture, the width along the text.</param>
/// <param name="Picture">Which of several pictures the outline lies in, from 0.</param>
public sealed record ReadLine(LineReading Reading, PictureRegion Region, int Picture)
{
    /// <summary>Its outlines in the other pictures that show it.</summary>
    public ValueList<(PictureRegion Region, int Picture)> Also { get; init; } = [];

    /// <summary>The outline's corners in the picture, clockwise from the text's own top left.</summary>
    public ValueList<PicturePoint> Outline => [.. Region.Corners];

    /// <summary>Middle of a place in the picture.</summary>
    public PicturePoint At(ReadPlace place) => Region.At(place.Along - 0.5, 0);
}
