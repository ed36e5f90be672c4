namespace Lidoff.Seeing.Measuring.Carrying;

/// <summary>What another picture of the same camera and zoom tells.</summary>
/// <param name="From">The name of that picture for people; hostile text.</param>
/// <param name="Calibration">What it tells.</param>
public sealed record KnownCamera(string From, CameraCalibration Calibration);
