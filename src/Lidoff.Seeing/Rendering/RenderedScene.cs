using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Rendering;

/// <summary>A rendered picture and everything that is true of it.</summary>
/// <param name="Scene">What was rendered.</param>
/// <param name="StoredWidth">Width as stored, before the orientation is applied, px.</param>
/// <param name="StoredHeight">Height as stored, px.</param>
/// <param name="Pixels">Red, green and blue, row by row as stored.</param>
/// <param name="Outline">Corners of the board in the upright picture, clockwise from its upper left.</param>
/// <param name="Parts">Every part.</param>
/// <param name="Ruler">First and last line of the ruler, <see cref="Scene.RulerMm"/> apart on the board's plane; null without a ruler.</param>
public sealed record RenderedScene(
    Scene Scene,
    int StoredWidth,
    int StoredHeight,
    byte[] Pixels,
    IReadOnlyList<PicturePoint> Outline,
    IReadOnlyList<TruePart> Parts,
    (PicturePoint From, PicturePoint To)? Ruler)
{
    /// <summary>Writes it as PNG with its orientation and the word "invented" in it.</summary>
    public void WritePng(Stream output) => PngFile.Write(output, StoredWidth, StoredHeight, Pixels, Scene.Orientation, "An invented board, rendered by Lidoff; no real product.");
}
