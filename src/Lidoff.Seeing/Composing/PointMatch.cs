namespace Lidoff.Seeing.Composing;

/// <summary>A place of one sheet and where the same thing shows on another, px, with how alike the two look (1: the same).</summary>
internal readonly record struct PointMatch(double X, double Y, double ToX, double ToY, double Score);
