using Lidoff.Evidence.Pictures;

namespace Lidoff.Telling.Drawing.Labelling;

/// <summary>A label that wants a place beside the picture.</summary>
/// <param name="Key">What it is called; orders labels that point at the same place.</param>
/// <param name="At">The point in the picture it belongs to, px.</param>
/// <param name="Width">Width of its words, px.</param>
/// <param name="Height">Height of its words, px.</param>
public sealed record LabelWish(string Key, PicturePoint At, double Width, double Height);
