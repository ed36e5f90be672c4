namespace Lidoff.Weighing.Modelling;

/// <summary>Names one length: which spot, which length of it.</summary>
public readonly record struct LengthKey(string Spot, string What);
