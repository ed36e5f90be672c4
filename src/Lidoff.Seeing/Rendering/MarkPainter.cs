namespace Lidoff.Seeing.Rendering;

/// <summary>
/// Paints a part's mark. Under flat light it shows by its colour; under a low light by the bright and the dark edge of each groove,
/// where a mark that rubbing has paled can still be seen.
/// </summary>
internal static class MarkPainter
{
    /// <summary>Colour of laser marks and pin-1 dots.</summary>
    public static readonly Ink Laser = new(126, 124, 118);

    private static readonly Ink Lit = new(150, 148, 142);
    private static readonly Ink Shaded = new(10, 10, 10);

    // Rubbing takes the colour of a mark before it takes the groove: a raking light still shows half of it.
    private const double GrooveLeft = 0.5;

    public static void Paint(ScenePart part, Scene scene, Canvas canvas, int px, int py, double u, double v, double cover)
    {
        if (part.Marks.Count == 0) return;
        // Lines fill 84 % of the length or 62 % of the width, whichever is tighter; a line is 1.5 cap heights.
        var letters = part.Marks.Max(line => line.Length);
        var cap = Math.Min(0.84 * part.LengthMm / (letters * StrokeFont.Advance), 0.62 * part.WidthMm / (part.Marks.Count * 1.5));
        var line = (int)Math.Floor((v / cap / 1.5) + (part.Marks.Count / 2.0));
        if (line < 0 || line >= part.Marks.Count) return;
        var text = part.Marks[line];
        var x = (u / cap) + (text.Length * StrokeFont.Advance / 2) - (1 / 6.0);
        var y = (v / cap) - ((line - (part.Marks.Count / 2.0)) * 1.5) - 0.25;
        // Wear fades from the right end; laser spots leave a slightly uneven line.
        var faded = part.Wear <= 0 ? 0 : Math.Clamp((u / part.LengthMm) + 0.5 - (1 - part.Wear) + 0.15, 0, 0.3) / 0.3;
        var spots = 0.8 + (0.4 * Scatter.Even(scene.Seed + 5, px, py));
        if (scene.Light == Lighting.Flat)
        {
            var ink = PartSkin.IsBright(part) ? Laser.Times(0.4) : Laser;
            canvas.Blend(px, py, ink, Math.Min(cover, Pen(text, x, y, cap, scene) * (1 - faded) * spots));
            return;
        }

        // An edge of the groove that faces the light is bright, one that turns away is dark: the stroke's own shape, moved to and fro.
        const double shift = 0.05;
        var (dx, dy) = scene.Light == Lighting.RakingLeft ? (shift, 0.0) : (0.0, shift);
        var relief = (Pen(text, x - dx, y - dy, cap, scene) - Pen(text, x + dx, y + dy, cap, scene)) * (1 - (faded * GrooveLeft)) * spots;
        canvas.Blend(px, py, relief > 0 ? Lit : Shaded, Math.Min(cover, Math.Abs(relief)));
    }

    private static double Pen(string text, double x, double y, double cap, Scene scene) =>
        Math.Clamp(0.5 + ((0.075 - StrokeFont.Distance(text, x, y, 0.4)) * cap * scene.PxPerMm), 0, 1);
}
