namespace Lidoff.Seeing.Measuring.Cameras;

/// <summary>One kind of camera and hand: how likely it is, and standard deviations of slant (tangent along each axis), lens and pixel shape.</summary>
internal sealed record CameraKind(double Weight, double Slant, double Bend, double Aspect);
