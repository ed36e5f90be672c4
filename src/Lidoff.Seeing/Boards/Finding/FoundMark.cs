using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Boards.Finding;

/// <summary>A place that a machine found in a picture and that may be found again in another one.</summary>
/// <param name="At">Its middle, px of the upright picture. Of a ring the middle of its dark disc, which is the drill's on both sides.</param>
/// <param name="RadiusPx">Mean radius of the edge that it was found by, px.</param>
/// <param name="UPx">Standard uncertainty of each coordinate, px, as its edge tells it.</param>
/// <param name="Sort">What it looks like.</param>
/// <param name="Even">How well it stands by itself, 0 to 1: even within, even around, round all about.</param>
public sealed record FoundMark(PicturePoint At, double RadiusPx, double UPx, MarkSort Sort, double Even);
