namespace Lidoff.Numbers.Calculating;

/// <summary>
/// What one input contributes to the variance of a value, first order: 0.71 means 71 %. The shares of a calculation sum to
/// one; with correlated inputs one of them can be below zero.
/// </summary>
public sealed record InputShare(string Input, double Share);
