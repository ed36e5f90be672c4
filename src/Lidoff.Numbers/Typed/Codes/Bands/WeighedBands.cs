namespace Lidoff.Numbers.Typed.Codes.Bands;

/// <summary>A reading of colour bands with how likely it is.</summary>
/// <param name="Reading">What they say.</param>
/// <param name="Colours">The colours in the order in which they are read.</param>
/// <param name="FromEnd">True where they are read from the last band to the first.</param>
/// <param name="P">Its probability among all readings and none of them.</param>
public sealed record WeighedBands(CodeReading Reading, IReadOnlyList<BandColour> Colours, bool FromEnd, double P);
