namespace Lidoff.Seeing.Standards;

/// <summary>
/// A standard size that a measured length must be: value, mm; kind (<c>body</c> or <c>pitch</c>); likelihood ratio against the
/// strongest rival, which is the next standard size or "no standard at all". At least ten.
/// </summary>
public sealed record StandardSnap(double Mm, string Kind, double LikelihoodRatio);
