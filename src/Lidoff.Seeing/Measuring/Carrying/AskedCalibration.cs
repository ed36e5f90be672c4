using Lidoff.Seeing.Measuring.Targets;

namespace Lidoff.Seeing.Measuring.Carrying;

/// <summary>A picture of a checkerboard or dot grid by the same camera at the same zoom, as a job names it.</summary>
/// <param name="Image">Its file.</param>
/// <param name="Pattern">The target in it.</param>
public sealed record AskedCalibration(string Image, AskedPattern Pattern);
