namespace Lidoff.Seeing.Measuring.Cameras;

/// <summary>A pose with its weight, the distance along the axis that fits the known lengths best, and that distance's standard uncertainty, mm.</summary>
internal readonly record struct SeenPose(double Weight, CameraPose Pose, double Focal, double DistanceMm, double UMm);
