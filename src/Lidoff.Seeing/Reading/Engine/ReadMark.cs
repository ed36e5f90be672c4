using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Reading.Finding;

namespace Lidoff.Seeing.Reading.Engine;

/// <summary>What was read of a mark.</summary>
/// <param name="TurnDeg">Clockwise turn that makes the mark upright, degrees from 0 to below 360, to a tenth.</param>
/// <param name="Lines">Lines in reading order; none where nothing was read.</param>
/// <param name="Otherwise">The lines read the other way up, where it was not clear which is right; none where it was.</param>
/// <param name="Dot">Pin-1 dot in the first picture, px; null where none was seen.</param>
/// <param name="Says">What is to be said of it.</param>
public sealed record ReadMark(double TurnDeg, ValueList<ReadLine> Lines, ValueList<ReadLine> Otherwise, PicturePoint? Dot, ValueList<string> Says)
{
    /// <summary>Where the dot lies on the upright body, and what that says of the turn; null where none was seen.</summary>
    public PinOne? PinOne { get; init; }

    /// <summary>Marks in the first picture that are no text, px; kept as places and never named.</summary>
    public ValueList<FoundEmblem> Emblems { get; init; } = [];
}
