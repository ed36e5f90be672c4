using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Reading.Finding;

namespace Lidoff.Seeing.Reading.Engine;

/// <summary>A mark as one picture shows it, before its readings are weighed: lines in order, which way up, what else was seen.</summary>
/// <param name="Lines">Lines in reading order.</param>
/// <param name="Turn">Common direction of the text in the picture, radians clockwise.</param>
/// <param name="Otherwise">The same mark read the other way up, where it was not clear which is right.</param>
/// <param name="Dot">Pin-1 dot in the picture, px; null where none was seen.</param>
/// <param name="Found">How many lines were found, read or not.</param>
/// <param name="Region">What part of the picture was looked at in the end.</param>
public sealed record ScannedMark(IReadOnlyList<ScannedLine> Lines, double Turn, IReadOnlyList<ScannedLine>? Otherwise, PicturePoint? Dot, int Found, PictureRegion Region)
{
    /// <summary>Probability of the dot, 0 to 1; 0 where none was seen.</summary>
    public double DotP { get; init; }

    /// <summary>The body on which dot and text lie, px of the picture: what was looked at, where no other was found in it.</summary>
    public PictureRegion Body { get; init; } = Region;

    /// <summary>Marks that are no text, px of the picture.</summary>
    public ValueList<FoundEmblem> Emblems { get; init; } = [];
}
