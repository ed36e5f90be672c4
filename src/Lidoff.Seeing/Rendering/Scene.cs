namespace Lidoff.Seeing.Rendering;

/// <summary>An invented board and how it is photographed. The same scene gives the same pixels on every machine.</summary>
public sealed record Scene
{
    /// <summary>Seed of everything that is random (weave, grain).</summary>
    public int Seed { get; init; } = 1;

    /// <summary>Title printed beside the board, besides "INVENTED", which is always there. Letters, digits and - . / : +.</summary>
    public string Title { get; init; } = "";

    /// <summary>Board width, mm, above zero.</summary>
    public required double BoardWidthMm { get; init; }

    /// <summary>Board height, mm, above zero.</summary>
    public required double BoardHeightMm { get; init; }

    /// <summary>Solder mask.</summary>
    public MaskColour Mask { get; init; } = MaskColour.Green;

    /// <summary>What sits on it.</summary>
    public required IReadOnlyList<ScenePart> Parts { get; init; }

    /// <summary>Picture width as seen upright, px.</summary>
    public int Width { get; init; } = 1600;

    /// <summary>Picture height as seen upright, px.</summary>
    public int Height { get; init; } = 1200;

    /// <summary>Scale at the board's middle, px/mm.</summary>
    public double PxPerMm { get; init; } = 36;

    /// <summary>Distance from the board's middle to the camera's pupil, mm.</summary>
    public double CameraDistanceMm { get; init; } = 120;

    /// <summary>Slant of the board about its horizontal axis, degrees; its lower edge comes nearer.</summary>
    public double TiltDegrees { get; init; }

    /// <summary>The place in the picture's middle, mm from the board's left and upper edge; null for the board's middle.</summary>
    public (double X, double Y)? LookAt { get; init; }

    /// <summary>Clockwise turn of the board in the picture, degrees.</summary>
    public double TurnDegrees { get; init; }

    /// <summary>Standard deviation of the blur, px; 0 for none.</summary>
    public double BlurPx { get; init; } = 0.7;

    /// <summary>Exponent of the tone curve between light, which a lens blurs, and the picture's values: 1 for none, about 2.2 for a camera's.</summary>
    public double ToneExponent { get; init; } = 1;

    /// <summary>Standard deviation of the grain, in steps of 255.</summary>
    public double Grain { get; init; } = 3;

    /// <summary>Where the light comes from.</summary>
    public Lighting Light { get; init; }

    /// <summary>How much darker the picture is at the side away from the light than in its middle, 0 to 0.8.</summary>
    public double Uneven { get; init; }

    /// <summary>Words on a strip along the picture's lower edge, outside the board; none where empty. Letters as in the title.</summary>
    public string Legend { get; init; } = "";

    /// <summary>Exif orientation the file is stored with, 1 to 8; after it is applied the picture is upright.</summary>
    public int Orientation { get; init; } = 1;

    /// <summary>Length of a ruler beside the board, mm; 0 for none.</summary>
    public double RulerMm { get; init; }
}
