using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Reading.Lattices;

namespace Lidoff.Seeing.Kinds;

/// <summary>One line as a machine read it.</summary>
/// <param name="Line">Place by place.</param>
/// <param name="Readings">Whole readings with their probabilities, likeliest first.</param>
/// <param name="Outline">Corners in its picture, clockwise from the text's own top left, px.</param>
/// <param name="Picture">Which of the pictures the outline lies in, from 0.</param>
public sealed record ReadingLine(MarkLine Line, ValueList<LineText> Readings, ValueList<PicturePoint> Outline, int Picture)
{
    /// <summary>Where other pictures show it, which were read with that one.</summary>
    public ValueList<LineElsewhere> Also { get; init; } = [];

    /// <summary>Its corners in a picture; none where that one does not show it, or nobody said where.</summary>
    public ValueList<PicturePoint> OutlineIn(int picture) => picture == Picture ? Outline : Also.FirstOrDefault(each => each.Picture == picture)?.Outline ?? [];

    /// <summary>Probability that the likeliest reading is right from end to end.</summary>
    public double P => Readings.Count > 0 ? Readings[0].P : 0;
}
