using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Kinds;

/// <summary>
/// One feature of the board that can be found again: a hole, a via, a fiducial, a corner. Seen in a picture, or known by its place on
/// the board, or both.
/// </summary>
/// <param name="Landmark">Its name, the same in every picture.</param>
/// <param name="Picture">The picture it was seen in, as it was named; empty for none.</param>
/// <param name="At">Where in it, px; null without a picture.</param>
/// <param name="UPx">Standard uncertainty of each coordinate there, px.</param>
/// <param name="XMm">Its place on the board seen from the top, mm to the right; null where it is not known.</param>
/// <param name="YMm">The same, mm downwards.</param>
/// <param name="UMm">Standard uncertainty of each of the two, mm.</param>
/// <param name="FoundBy">The match by which a machine found it and a person took it over, as an entry; empty for one pointed at by hand.</param>
public sealed record LandmarkSighting(string Landmark, string Picture, PicturePoint? At, double UPx, double? XMm, double? YMm, double UMm, string FoundBy = "");
