namespace Lidoff.Seeing.Rendering.Invented;

/// <summary>
/// Brindle's main board, 34 × 22 mm. Everything is placed as seen from above; the lower side is its mirror image, so that holes and
/// vias of both sides meet.
/// </summary>
internal static class MainBoard
{
    public const double WidthMm = 34;
    public const double HeightMm = 22;

    private static readonly (double X, double Y)[] Vias =
    [
        (2.2, 7), (7, 7.2), (7, 13), (12.5, 14.5), (14.8, 11), (15.6, 8), (19.5, 3), (19.8, 10.2), (20.5, 16.2), (23.4, 16.4),
        (25.6, 16), (27.2, 12), (30.6, 12.6), (31.4, 16.6), (25.8, 3.6), (31.6, 8),
    ];

    private static IEnumerable<ScenePart> Holes =>
    [
        new("H1", PartShape.Hole, 1.5, 1.5, 1.6, 1.6, 0), new("H2", PartShape.Hole, 32.5, 20.5, 1.6, 1.6, 0),
        .. Vias.Select((via, i) => new ScenePart($"V{i + 1}", PartShape.Hole, via.X, via.Y, 0.5, 0.5, 0)),
    ];

    /// <summary>The chips as specimen A has them.</summary>
    public static IReadOnlyList<ScenePart> TopChips { get; } =
    [
        new("U1", PartShape.Chip, 11, 10, 6, 6, 0.85) { Marks = ["N52832", "QFAAE0", "2131AC"], Ways = 48, PitchMm = 0.4, LeadMm = 0.15, LeadSides = 4 },
        new("U2", PartShape.Chip, 24, 7, 5.3, 5.3, 1.9) { Marks = ["25Q32JVSIQ", "2118"], Ways = 8, PitchMm = 1.27, LeadMm = 0.9 },
        new("U3", PartShape.Chip, 28, 14.4, 3.2, 1.5, 0.8) { Marks = ["3028C7"], Wear = 0.5 },
        new("U5", PartShape.Chip, 28.6, 19.2, 2, 2, 0.8) { Marks = ["NXE", "118"], Ways = 10, PitchMm = 0.4, LeadMm = 0.12 },
        new("U6", PartShape.Chip, 9.4, 3.4, 3, 2, 0.8) { Marks = ["62740", "1841"], Ways = 12, PitchMm = 0.5, LeadMm = 0.12 },
        // Six lands a side and one at each end: the outline of 3 × 5 mm with 14 lands that accelerometers of this family share (from memory).
        new("U7", PartShape.Chip, 20, 13.4, 5, 3, 1) { Marks = ["345B", "#118", "4417"], Ways = 14, EndLeads = 1, PitchMm = 0.8, LeadMm = 0.1 },
    ];

    public static Scene Top(int seed) => new()
    {
        Seed = seed,
        Title = "BRINDLE OTTERMILL WORKS",
        BoardWidthMm = WidthMm,
        BoardHeightMm = HeightMm,
        RulerMm = 30,
        Parts =
        [
            .. TopChips,
            new("X1", PartShape.Can, 4.5, 10, 2.5, 2, 0.55) { Marks = ["32.000"] },
            new("J1", PartShape.Connector, 15, 19, 18.75, 3, 1.2) { Ways = 14, PitchMm = 1.25 },
            new("J3", PartShape.Connector, 2.5, 15, 2, 5, 1),
            new("ANT1", PartShape.Box, 30.4, 1.9, 3.2, 1.6, 1.1) { Tint = PartTint.White },
            new("G1", PartShape.Blob, 4.6, 19.4, 3, 2.4, 1.4),
            new("C1", PartShape.Passive, 17.5, 6, 1, 0.5, 0.5),
            new("C2", PartShape.Passive, 17.5, 9, 1.6, 0.8, 0.8),
            new("C3", PartShape.Passive, 13, 3.4, 1.6, 0.8, 0.8) { TurnDegrees = 90 },
            new("C4", PartShape.Passive, 31.4, 18.6, 1.6, 0.8, 0.8) { TurnDegrees = 90 },
            new("R1", PartShape.Passive, 24.6, 13, 1, 0.5, 0.35) { TurnDegrees = 90 },
            new("R2", PartShape.Passive, 25.6, 13, 1, 0.5, 0.35) { TurnDegrees = 90 },
            new("R3", PartShape.Passive, 31, 20.6, 1, 0.5, 0.35),
            new("L1", PartShape.Passive, 5, 4, 2, 1.25, 0.9),
            .. Holes,
        ],
    };

    public static Scene Bottom(int seed) => Mirrors.Of(Top(seed) with
    {
        Parts =
        [
            new("U8", PartShape.Chip, 28, 5.4, 2.9, 1.6, 1.2) { Marks = ["DW01A"], Ways = 6, PitchMm = 0.95, LeadMm = 0.6 },
            new("Q1", PartShape.Chip, 28, 10, 2.9, 1.6, 1.2) { Marks = ["8205A"], Ways = 6, PitchMm = 0.95, LeadMm = 0.6 },
            new("M1", PartShape.Can, 7, 10, 3.5, 2.65, 0.98),
            .. Enumerable.Range(1, 4).Select(i => new ScenePart($"K{i}", PartShape.Pad, 5 + (5 * i), 17, 2.6, 2.6, 0.3) { RoundMm = 1.3 }),
            .. Enumerable.Range(1, 6).Select(i => new ScenePart($"TP{i}", PartShape.Pad, 11 + (2.2 * i), 4, 1.2, 1.2, 0) { RoundMm = 0.6 }),
            .. Enumerable.Range(1, 5).Select(i => new ScenePart($"P{i}", PartShape.Pad, 13 + (1.27 * i), 8, 0.8, 1.6, 0)),
            new("BP1", PartShape.Pad, 31.2, 14, 2, 1.6, 0), new("BN1", PartShape.Pad, 31.2, 17, 2, 1.6, 0),
            new("C5", PartShape.Passive, 24.6, 7.6, 1, 0.5, 0.5),
            new("R4", PartShape.Passive, 24.6, 5, 1, 0.5, 0.35),
            .. Holes,
        ],
    });
}
