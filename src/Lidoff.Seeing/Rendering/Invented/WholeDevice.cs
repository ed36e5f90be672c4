namespace Lidoff.Seeing.Rendering.Invented;

/// <summary>Brindle as a whole on the desk: closed, at its seam, opened with the cell in place, its parts side by side. Heights in mm above the desk.</summary>
internal static class WholeDevice
{
    private static ScenePart Box(string spot, double x, double y, double length, double width, double height, PartTint tint, double round = 0, params string[] marks) =>
        new(spot, PartShape.Box, x, y, length, width, height) { Tint = tint, RoundMm = round, Marks = marks };

    private static readonly IReadOnlyList<ScenePart> Straps = [Box("STRAP1", 4, 22, 8, 16, 2, PartTint.Orange), Box("STRAP2", 56, 22, 8, 16, 2, PartTint.Orange)];

    private static readonly ScenePart Shell = Box("CASE", 30, 22, 46, 32, 11, PartTint.Black, 6);

    private static readonly IReadOnlyList<ScenePart> Tray = [Box("TRAY", 30, 22, 46, 32, 4, PartTint.Black, 6), Box("WELL", 30, 22, 43, 29, 4.01, PartTint.Gap, 5)];

    private static readonly ScenePart Cell = Box("B1", 23, 24, 20.1, 14.9, 8, PartTint.Silver, 1, "OW-B7", "0.67WH 3.7V");

    private static Scene Frame(int seed, params IEnumerable<ScenePart> parts) => new()
    {
        Seed = seed, Title = "", Mask = MaskColour.None, BoardWidthMm = 60, BoardHeightMm = 44, PxPerMm = 11.4, CameraDistanceMm = 220, Width = 720, Height = 540, Grain = 1.6, Parts = [.. parts],
    };

    /// <summary>The lid with display window, lamp window and button.</summary>
    public static Scene ClosedTop() => Frame(31, [.. Straps, Shell, Box("DS1", 25, 18, 16, 12, 11.02, PartTint.Glass, 1, "BARKS 0417"),
        Box("D1", 43, 14, 5, 5, 11.3, PartTint.White, 2.5), Box("S1", 43, 27, 8, 8, 11.6, PartTint.Orange, 4), Box("NAME", 27, 32, 22, 4, 11.01, PartTint.Black, 0, "OTTERMILL WORKS")]);

    /// <summary>The back with four charging contacts.</summary>
    public static Scene ClosedBack() => Frame(32, [.. Straps, Shell, .. Enumerable.Range(1, 4).Select(i => new ScenePart($"K{i}", PartShape.Pad, 17.5 + (5 * i), 24, 2.6, 2.6, 11.2) { RoundMm = 1.3 }),
        Box("LABEL", 30, 14, 30, 6, 11.02, PartTint.White, 0, "BRINDLE OW-3 INVENTED")]);

    /// <summary>The edge: lid and tray with the seam between, and the strap's lug.</summary>
    public static Scene Edge() => Frame(33, Box("LID", 30, 18, 46, 7, 6, PartTint.Black, 2), Box("TRAY", 30, 25.6, 46, 7.4, 6, PartTint.Black, 2),
        Box("SE1", 30, 21.7, 45, 0.35, 6.02, PartTint.Gap), Box("LUG", 3, 24, 8, 4, 5, PartTint.Black, 1));

    /// <summary>The opened tray: board, cell beside it, cable to the lid's board.</summary>
    public static Scene Opened(bool cable = true) => Frame(cable ? 34 : 35, [.. Tray, Box("MAIN", 31, 18, 34, 22, 5.5, PartTint.Green), Cell,
        Box("ST1", 38, 30.5, 18.75, 3, 6.2, PartTint.White), new ScenePart("W1", PartShape.Cable, 38, cable ? 38 : 40, 14, 18.75, 6) { TurnDegrees = 90, Ways = 14, PitchMm = 1.25 }]);

    /// <summary>The tray after the cell was lifted out; the cell lies beside it.</summary>
    public static Scene CellOut() => Frame(36, [.. Tray, Box("MAIN", 31, 18, 34, 22, 5.5, PartTint.Green), Cell with { X = 46, Y = 39, HeightMm = 4 }, Box("TAPE", 35, 39, 3, 3, 4.2, PartTint.Orange)]);

    /// <summary>Both boards, cable, cell and display side by side.</summary>
    public static Scene Spread() => Frame(37, Box("MAIN", 19, 14, 34, 22, 1.6, PartTint.Green), Box("LAMP", 48, 10, 22, 12, 1.6, PartTint.Blue), Cell with { X = 14, Y = 36, HeightMm = 4 },
        new ScenePart("W1", PartShape.Cable, 47, 29, 20, 18.75, 0.3) { TurnDegrees = 90, Ways = 14, PitchMm = 1.25 }, Box("DS1", 31, 36, 11, 9, 1.2, PartTint.Glass, 0.5));

    /// <summary>The cable alone, flat, with its stiffeners.</summary>
    public static Scene CableFlat() => Frame(38, new ScenePart("W1", PartShape.Cable, 30, 22, 42, 18.75, 0.3) { Ways = 14, PitchMm = 1.25 },
        Box("ST1", 12, 22, 5, 18.75, 0.5, PartTint.White), Box("ST2", 48, 22, 5, 18.75, 0.5, PartTint.White));

    /// <summary>The cell's print with its two wires.</summary>
    public static Scene CellPrint() => Frame(39, Cell with { X = 30, Y = 22, HeightMm = 4 }, Box("WIRE1", 46, 20, 14, 1.1, 1.1, PartTint.Orange, 0.5), Box("WIRE2", 46, 24, 14, 1.1, 1.1, PartTint.Black, 0.5)) with { PxPerMm = 17 };

    /// <summary>On its dock: the magnetic plug over the contacts.</summary>
    public static Scene Charging() => Frame(40, [.. Straps, Shell, Box("DOCK", 30, 24, 24, 8, 14, PartTint.White, 3), Box("LEAD", 30, 39, 3, 26, 6, PartTint.White, 1)]);
}
