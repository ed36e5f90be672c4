namespace Lidoff.Seeing.Rendering.Invented;

/// <summary>Close-ups of one part with a glass scale lying below it in the picture; at a zoom that lets its body fill about half the height.</summary>
internal static class CloseUp
{
    private const int WidthPx = 640;
    private const int HeightPx = 480;

    /// <summary>Designator of the glass scale in the scene.</summary>
    public const string Graticule = "SCALE";

    // Zoom clicks of the stand: the microscope stops at these, px/mm.
    private static readonly double[] Clicks = [40, 65, 90, 130, 180];

    public static Shot Flat(Scene board, string spot, string specimen) => Of(board, spot, specimen, "", "flat", Lighting.Flat);

    /// <summary>Under flat light and under a low one from two sides, so that a mark can be read by its grooves.</summary>
    public static IEnumerable<Shot> Lights(Scene board, string spot, string specimen) =>
    [
        Flat(board, spot, specimen),
        Of(board, spot, specimen, "-raking-left", "low, from the left", Lighting.RakingLeft),
        Of(board, spot, specimen, "-raking-top", "low, from above", Lighting.RakingTop),
    ];

    private static Shot Of(Scene board, string spot, string specimen, string suffix, string light, Lighting lighting)
    {
        var part = board.Parts.Single(each => each.Spot == spot);
        var (across, down) = part.TurnDegrees % 180 == 0 ? (part.LengthMm, part.WidthMm) : (part.WidthMm, part.LengthMm);
        var zoom = Clicks.Where(click => click * across < 0.7 * WidthPx && click * (down + (2 * part.LeadMm)) < 0.62 * HeightPx).DefaultIfEmpty(Clicks[0]).Max();
        var (width, height) = (WidthPx / zoom, HeightPx / zoom);
        var ruler = Math.Floor(width * 0.8);
        var look = (part.X, part.Y + (height * 0.08));
        // The scale lies on the board's plane below the part, parts that would reach into it are left where they are beneath it.
        var scale = new ScenePart(Graticule, PartShape.Graticule, part.X, look.Item2 + (height * 0.39), ruler, height * 0.12, 0) { Tint = PartTint.White };
        var seed = board.Seed + (spot.Sum(letter => letter) * 3) + (int)lighting;
        return new(
            $"brindle-{spot.ToLowerInvariant()}{suffix}.png",
            specimen,
            "",
            light,
            FormattableString.Invariant($"close {zoom:0} px/mm"),
            spot,
            board with
            {
                Seed = seed, Parts = [.. board.Parts.Where(each => each.Spot == spot || Clear(each, scale)), scale], Width = WidthPx, Height = HeightPx, PxPerMm = zoom,
                CameraDistanceMm = 80, LookAt = look, RulerMm = 0, Light = lighting, Uneven = lighting == Lighting.Flat ? 0.1 : 0.5, BlurPx = 1, Grain = 1.6,
                TurnDegrees = ((seed * 7) % 9) - 4, Legend = "",
            });
    }

    private static bool Clear(ScenePart part, ScenePart scale)
    {
        var reach = Math.Max(part.LengthMm, part.WidthMm) / 2;
        return Math.Abs(part.Y - scale.Y) > reach + (scale.WidthMm / 2) || Math.Abs(part.X - scale.X) > reach + (scale.LengthMm / 2);
    }
}
