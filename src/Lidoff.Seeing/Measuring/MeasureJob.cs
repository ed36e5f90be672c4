using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring.Carrying;
using Lidoff.Seeing.Measuring.Rulers;
using Lidoff.Seeing.Measuring.Targets;

namespace Lidoff.Seeing.Measuring;

/// <summary>Lengths wanted from one picture, as <c>lidoff measure</c> takes them.</summary>
public sealed record MeasureJob
{
    /// <summary>Standard uncertainty of one clicked coordinate when none is given, px.</summary>
    public const double DefaultClickPx = 1.0;

    /// <summary>The picture's file as the job names it.</summary>
    public required string Image { get; init; }

    /// <summary>Known lengths, at least one where no places are known.</summary>
    public required IReadOnlyList<ReferenceLength> References { get; init; }

    /// <summary>Places of the picture whose places on the board are known; none, or four and more.</summary>
    public IReadOnlyList<KnownPoint> KnownPoints { get; init; } = [];

    /// <summary>Rulers that lie in the picture and are still to be read.</summary>
    public IReadOnlyList<AskedRuler> Rulers { get; init; } = [];

    /// <summary>Whether rulers are to be found in the picture without being pointed at.</summary>
    public bool FindRulers { get; init; }

    /// <summary>A checkerboard or dot grid that lies in the picture and is still to be found; null for none.</summary>
    public AskedPattern? Pattern { get; init; }

    /// <summary>A picture of a target by the same camera at the same zoom, still to be looked at; null for none.</summary>
    public AskedCalibration? Calibration { get; init; }

    /// <summary>What a picture of the same camera and zoom tells; null for none.</summary>
    public KnownCamera? Camera { get; init; }

    /// <summary>What to measure, in the order asked; a target that cannot be measured holds its faults instead.</summary>
    public required IReadOnlyList<AskedTarget> Targets { get; init; }

    /// <summary>Standard uncertainty of each clicked end along the length, px, zero or more.</summary>
    public double ClickPx { get; init; } = DefaultClickPx;

    /// <summary>True when ends of lengths and circles are to be moved onto the edges near them.</summary>
    public bool SnapEdges { get; init; }

    /// <summary>Distance from the board to the camera's entrance pupil, mm; null when nobody measured it.</summary>
    public double? CameraDistanceMm { get; init; }

    /// <summary>Keys the job has and Lidoff does not know, with their place; kept out of the computation.</summary>
    public IReadOnlyList<string> UnknownKeys { get; init; } = [];
}
