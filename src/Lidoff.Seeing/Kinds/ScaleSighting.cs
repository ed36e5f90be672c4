using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Kinds;

/// <summary>
/// A known length in a picture: which picture (file name, entry id or the start of the file's hash), its ends, its length with standard
/// uncertainty, its height above the board (mm), and the camera's distance (mm) when it was measured.
/// </summary>
public sealed record ScaleSighting(string Picture, ReferenceLength Reference, double? CameraDistanceMm);
