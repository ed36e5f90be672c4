namespace Lidoff.Catalogue.Parts;

/// <summary>
/// One package a part comes in: name as its source has it, family word (<c>QFN, DFN, LGA, BGA, WLCSP, SOIC, SSOP, TSSOP, SOT,
/// SC70, QFP, chip, module, can, die</c>; empty when unknown), body length and width, height and pitch in mm, pins.
/// </summary>
public sealed record PackageFact(string Name, string Family, double? LengthMm, double? WidthMm, double? HeightMm, double? PitchMm, int? Pins)
{
    /// <summary>The orderable variants that come in this package, in ordinal order; empty when no source says which.</summary>
    public IReadOnlyList<string> OrderCodes { get; init; } = [];

    /// <summary>The best confidence among the rows that say so.</summary>
    public Confidence Confidence { get; init; }
}
