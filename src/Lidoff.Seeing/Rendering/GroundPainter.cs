namespace Lidoff.Seeing.Rendering;

/// <summary>Paints what lies under the parts: desk, board, the words above the board and the ruler below it.</summary>
internal static class GroundPainter
{
    private const double TitleMm = 1.0;

    private static readonly Ink Desk = new(196, 190, 180);
    private static readonly Ink Silk = new(232, 234, 228);
    private static readonly Ink Dark = new(40, 38, 36);

    public static void Paint(Scene scene, SceneCamera camera, Canvas canvas)
    {
        var mask = scene.Mask == MaskColour.Blue ? new Ink(30, 62, 120) : new Ink(28, 92, 52);
        var dim = scene.Light == Lighting.Flat ? 1 : 0.6;
        var words = scene.Mask == MaskColour.None ? "" : ("INVENTED " + scene.Title).TrimEnd();
        for (var py = 0; py < scene.Height; py++)
        {
            for (var px = 0; px < scene.Width; px++)
            {
                var (x, y) = camera.See(px + 0.5, py + 0.5, 0);
                var inside = Math.Min(Math.Min(x, scene.BoardWidthMm - x), Math.Min(y, scene.BoardHeightMm - y));
                var cover = scene.Mask == MaskColour.None ? 0 : 0.5 + (inside * scene.PxPerMm);
                if (cover < 1) canvas.Blend(px, py, Desk.Times(dim * (0.97 + (0.06 * Scatter.Even(scene.Seed + 11, px / 3, py / 3)))), 1);
                if (cover > 0) canvas.Blend(px, py, mask.Times(dim * Weave(scene.Seed, x, y)), cover);
                else Beside(scene, canvas, px, py, x, y, words);
            }
        }
    }

    /// <summary>The glass weave shows through the mask as a faint chequer of 0.5 mm; copper lines as brighter bands.</summary>
    private static double Weave(int seed, double x, double y)
    {
        var (column, row) = ((int)Math.Floor(x * 2), (int)Math.Floor(y * 2));
        var lane = (int)Math.Floor(y * 1.25);
        var copper = (y * 1.25) - lane < 0.3 && Scatter.Even(seed + 3, lane, (int)Math.Floor(x / 6)) > 0.55 ? 1.22 : 1;
        return copper * (0.97 + (0.06 * Scatter.Even(seed + 2, column, row)));
    }

    private static void Beside(Scene scene, Canvas canvas, int px, int py, double x, double y, string words)
    {
        const double pen = 0.07;
        var (tx, ty) = (x / TitleMm, (y + TitleMm + 1) / TitleMm);
        if (ty is > -0.5 and < 1.5)
        {
            canvas.Blend(px, py, Dark, 0.5 + ((pen - StrokeFont.Distance(words, tx, ty, 0.5)) * TitleMm * scene.PxPerMm));
        }

        if (scene.RulerMm <= 0) return;
        var (rx, ry) = (x, y - scene.BoardHeightMm - SceneTruth.RulerGapMm);
        if (ry is < -0.3 or > 4 || rx < -2 || rx > scene.RulerMm + 2) return;
        canvas.Blend(px, py, Silk, 0.5 + (Math.Min(Math.Min(ry + 0.3, 4 - ry), Math.Min(rx + 2, scene.RulerMm + 2 - rx)) * scene.PxPerMm));
        var line = Math.Clamp(Math.Round(rx), 0, scene.RulerMm);
        var length = line % 10 == 0 ? 3 : line % 5 == 0 ? 2.2 : 1.4;
        canvas.Blend(px, py, Dark, ry >= 0 && ry <= length ? 0.5 + ((0.06 - Math.Abs(rx - line)) * scene.PxPerMm) : 0);
    }
}
