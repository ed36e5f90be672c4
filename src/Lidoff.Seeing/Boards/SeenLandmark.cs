using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Boards;

/// <summary>A landmark where it shows in a picture: name, place and standard uncertainty of each coordinate, px.</summary>
public sealed record SeenLandmark(string Name, PicturePoint At, double UPx);
