namespace Lidoff.Telling.Drawing.Labelling;

/// <summary>How large things are in a picture: px of the upright picture per mm, and the relative standard uncertainty of that (0.02 is 2 %).</summary>
public sealed record BarScale(double PxPerMm, double RelativeU);
