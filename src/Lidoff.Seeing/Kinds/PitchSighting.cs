namespace Lidoff.Seeing.Kinds;

/// <summary>A measured pitch, mm, its standard uncertainty, and over how many leads it was taken (0 when not said).</summary>
public sealed record PitchSighting(string Spot, double Mm, double UMm, int Leads);
