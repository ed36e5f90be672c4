namespace Lidoff.Catalogue.Parts;

/// <summary>
/// One package a part comes in: name as its source has it, family word (<c>QFN, DFN, LGA, BGA, WLCSP, SOIC, SSOP, TSSOP, SOT,
/// SC70, QFP, chip, module, can, die</c>; empty when unknown), body length and width, height and pitch in mm, pins.
/// </summary>
public sealed record PackageFact(string Name, string Family, double? LengthMm, double? WidthMm, double? HeightMm, double? PitchMm, int? Pins);
