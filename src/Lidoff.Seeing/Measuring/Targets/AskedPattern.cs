namespace Lidoff.Seeing.Measuring.Targets;

/// <summary>A checkerboard or dot grid that lies in the picture and is to be found.</summary>
/// <param name="PitchMm">From one corner or dot to the next, mm; null where it is to be asked for.</param>
/// <param name="UMm">Its standard uncertainty, mm; null for that of a print (<see cref="KnownTarget.PrintedU"/>).</param>
/// <param name="HeightMm">Height of the target above the board, mm (default 0).</param>
public sealed record AskedPattern(double? PitchMm = null, double? UMm = null, double HeightMm = 0);
