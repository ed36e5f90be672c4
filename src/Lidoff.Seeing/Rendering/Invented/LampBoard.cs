namespace Lidoff.Seeing.Rendering.Invented;

/// <summary>Brindle's small board with button and lamp, 22 × 12 mm, blue; placed as seen from above.</summary>
internal static class LampBoard
{
    private static IEnumerable<ScenePart> Holes =>
    [
        new("H3", PartShape.Hole, 1.4, 10.6, 1.4, 1.4, 0), new("H4", PartShape.Hole, 20.6, 1.4, 1.4, 1.4, 0),
        .. new[] { (9.0, 3.0), (9.2, 9.4), (14.4, 10.2), (18.6, 6.4), (18.4, 9.6) }.Select((via, i) => new ScenePart($"V{i + 1}", PartShape.Hole, via.Item1, via.Item2, 0.5, 0.5, 0)),
    ];

    public static Scene Top(int seed) => new()
    {
        Seed = seed,
        Title = "BRINDLE LAMP",
        BoardWidthMm = 22,
        BoardHeightMm = 12,
        PxPerMm = 48,
        CameraDistanceMm = 90,
        Mask = MaskColour.Blue,
        RulerMm = 15,
        Parts =
        [
            new("S1", PartShape.Can, 5, 6, 4, 3, 1.5),
            new("D1", PartShape.Connector, 13, 3, 1.6, 0.8, 0.6),
            new("U4", PartShape.Chip, 13, 7, 2.4, 2.4, 0.75) { Marks = ["OW7K", "V-04"], Ways = 8, PitchMm = 0.5, LeadMm = 0.12 },
            new("L2", PartShape.Passive, 16.6, 7, 2, 1.6, 1),
            new("C6", PartShape.Passive, 16.4, 4.4, 1, 0.5, 0.5),
            .. Holes,
        ],
    };

    public static Scene Bottom(int seed) => Mirrors.Of(Top(seed) with
    {
        Parts =
        [
            new("J2", PartShape.Connector, 11, 8.6, 18.75, 3, 1.2) { Ways = 14, PitchMm = 1.25 },
            new("OM1", PartShape.Blob, 11, 11, 19, 2.4, 1.8),
            .. Enumerable.Range(1, 4).Select(i => new ScenePart($"TP{i + 10}", PartShape.Pad, 5 + (2.5 * i), 3, 1.2, 1.2, 0) { RoundMm = 0.6 }),
            .. Holes,
        ],
    });
}
