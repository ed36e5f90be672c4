namespace Lidoff.Evidence.Pictures;

/// <summary>One thing seen in two frames: a hole, a corner, a mark.</summary>
public readonly record struct PointPair(PicturePoint From, PicturePoint To);
