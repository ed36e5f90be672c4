using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Measuring;

/// <summary>A place of the picture whose place on the board is known.</summary>
/// <param name="At">Where it shows.</param>
/// <param name="X">Place on the board, mm from anywhere.</param>
/// <param name="Y">The other coordinate, mm, at a right angle.</param>
/// <param name="UMm">Standard uncertainty of each coordinate on the board, mm, zero or more.</param>
public sealed record KnownPoint(PicturePoint At, double X, double Y, double UMm = 0);
