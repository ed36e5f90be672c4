namespace Lidoff.Seeing.Standards;

/// <summary>One standard length: nominal value, mm; what it is (<c>body</c> or <c>pitch</c>); standard deviation of real parts about it, mm.</summary>
public sealed record StandardSize(double Mm, string Kind, double SpreadMm);
