using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Kinds;

/// <summary>Two ends in a picture (file name, entry id or start of the file's hash), their height above the board (mm) and the click error (px).</summary>
public sealed record PictureLength(string Picture, PicturePoint From, PicturePoint To, double HeightMm, double ClickPx);
