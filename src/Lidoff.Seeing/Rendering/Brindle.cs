namespace Lidoff.Seeing.Rendering;

/// <summary>
/// Boards of <i>Brindle</i>, a bark counter and night lamp for a working dog's collar by the Ottermill Works. Device and maker are
/// invented; the sizes of bodies are those of standard outlines.
/// </summary>
public static class Brindle
{
    /// <summary>The upper side of the main board: 34 × 22 mm, radio chip, flash, clock with a half-worn mark, crystal, flat-cable connector, passives.</summary>
    public static Scene MainTop(int seed = 1) => new()
    {
        Seed = seed,
        Title = "BRINDLE OTTERMILL WORKS",
        BoardWidthMm = 34,
        BoardHeightMm = 22,
        RulerMm = 30,
        Parts =
        [
            new("U1", PartShape.Chip, 11, 10, 6, 6, 0.85) { Marks = ["N52832", "QFAAE0", "2131AC"] },
            new("U2", PartShape.Chip, 24, 7, 5.3, 5.3, 1.9) { Marks = ["25Q32JVSIQ", "2118"] },
            new("U3", PartShape.Chip, 28, 15, 3.2, 1.6, 0.8) { Marks = ["3028C7"], Wear = 0.5 },
            new("X1", PartShape.Can, 4.5, 10, 2.5, 2, 0.55) { Marks = ["32.000"] },
            new("J1", PartShape.Connector, 15, 19, 18.75, 3, 1.2) { Ways = 14, PitchMm = 1.25 },
            new("C1", PartShape.Passive, 17.5, 6, 1, 0.5, 0.5),
            new("C2", PartShape.Passive, 17.5, 9, 1.6, 0.8, 0.8),
            new("R1", PartShape.Passive, 17.5, 12, 1, 0.5, 0.35) { TurnDegrees = 90 },
            new("L1", PartShape.Passive, 5, 4, 2, 1.25, 0.9),
        ],
    };

    /// <summary>The small board with button and lamp: 16 × 12 mm, blue.</summary>
    public static Scene LampTop(int seed = 2) => new()
    {
        Seed = seed,
        Title = "BRINDLE LAMP",
        BoardWidthMm = 16,
        BoardHeightMm = 12,
        PxPerMm = 60,
        CameraDistanceMm = 90,
        Mask = MaskColour.Blue,
        RulerMm = 15,
        Parts =
        [
            new("S1", PartShape.Can, 5, 6, 4, 3, 1.5),
            new("D1", PartShape.Connector, 11, 4, 1.6, 0.8, 0.6),
            new("U4", PartShape.Chip, 11.5, 8, 2, 2, 0.75) { Marks = ["B7K", "21"] },
        ],
    };
}
