namespace Lidoff.Evidence.Pictures;

/// <summary>Width and height of a picture in pixels, each above zero.</summary>
public readonly record struct PictureSize(double Width, double Height);
