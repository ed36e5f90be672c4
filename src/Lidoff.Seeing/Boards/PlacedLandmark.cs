using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Boards;

/// <summary>A landmark's first place on the board, mm, with the standard uncertainty of each coordinate.</summary>
internal readonly record struct PlacedLandmark(PicturePoint At, double U);
