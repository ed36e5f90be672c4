using Lidoff.Evidence.Pictures;

namespace Lidoff.Telling.Drawing.Labelling;

/// <summary>Something pointed at: its designator, its place in the upright picture (px), and a few words on what it is; empty for none. Texts are hostile.</summary>
public sealed record PictureSpot(string Spot, PicturePoint At, string Words = "");
