using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Boards;

/// <summary>A landmark seen in a picture, both by their number in the fit.</summary>
internal sealed record BoardSighting(int View, int Landmark, PicturePoint At, double UPx);
