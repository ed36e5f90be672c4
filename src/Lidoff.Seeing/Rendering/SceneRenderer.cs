using Lidoff.Evidence.Pictures;
using Lidoff.Numbers;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Rendering;

/// <summary>
/// Renders an invented board as a bench picture with known truth: for each pixel the camera's ray is followed to the board and to the
/// top and flanks of every part, edges covered by their distance. Plain arithmetic in fixed order: the same pixels everywhere.
/// </summary>
public static class SceneRenderer
{
    private const double TitleMm = 1.0;
    private const double RulerGapMm = 3;

    private static readonly Ink Desk = new(196, 190, 180);
    private static readonly Ink Silk = new(232, 234, 228);
    private static readonly Ink Dark = new(40, 38, 36);

    /// <summary>Renders. The words of the scene must be drawable: capital letters, digits and - . / : +.</summary>
    public static RenderedScene Render(Scene scene)
    {
        Guard.Positive(scene.BoardWidthMm);
        Guard.Positive(scene.BoardHeightMm);
        Guard.That(scene.Width > 0 && scene.Height > 0 && scene.Orientation is >= 1 and <= 8, "a size above zero and an orientation from 1 to 8");
        Guard.That(StrokeFont.Knows(scene.Title) && scene.Parts.All(part => part.Marks.All(StrokeFont.Knows)), "words of capital letters, digits and - . / : +");
        var camera = new SceneCamera(scene);
        var canvas = new Canvas(scene.Width, scene.Height);
        Ground(scene, camera, canvas);
        foreach (var part in scene.Parts.OrderBy(part => part.HeightMm).ThenBy(part => part.Spot, StringComparer.Ordinal)) PartPainter.Paint(part, scene, camera, canvas);
        canvas.Blur(scene.BlurPx);
        var swaps = scene.Orientation >= 5;
        var (w, h) = (scene.BoardWidthMm, scene.BoardHeightMm);
        return new(
            scene,
            swaps ? scene.Height : scene.Width,
            swaps ? scene.Width : scene.Height,
            canvas.Stored(scene.Orientation, scene.Grain, scene.Seed),
            [camera.Show(0, 0, 0), camera.Show(w, 0, 0), camera.Show(w, h, 0), camera.Show(0, h, 0)],
            [.. scene.Parts.Select(part => new TruePart(part, Corners(part, camera)))],
            scene.RulerMm > 0 ? (camera.Show(0, h + RulerGapMm, 0), camera.Show(scene.RulerMm, h + RulerGapMm, 0)) : null);
    }

    private static void Ground(Scene scene, SceneCamera camera, Canvas canvas)
    {
        var mask = scene.Mask == MaskColour.Green ? new Ink(28, 92, 52) : new Ink(30, 62, 120);
        var words = ("INVENTED " + scene.Title).TrimEnd();
        for (var py = 0; py < scene.Height; py++)
        {
            for (var px = 0; px < scene.Width; px++)
            {
                var (x, y) = camera.See(px + 0.5, py + 0.5, 0);
                canvas.Blend(px, py, Desk.Times(0.97 + (0.06 * Scatter.Even(scene.Seed + 11, px / 3, py / 3))), 1);
                var inside = Math.Min(Math.Min(x, scene.BoardWidthMm - x), Math.Min(y, scene.BoardHeightMm - y));
                var cover = 0.5 + (inside * scene.PxPerMm);
                if (cover > 0) canvas.Blend(px, py, mask.Times(Weave(scene.Seed, x, y)), cover);
                else Beside(scene, canvas, px, py, x, y, words);
            }
        }
    }

    /// <summary>The glass weave shows through the mask as a faint chequer of 0.5 mm; copper lines as brighter bands.</summary>
    private static double Weave(int seed, double x, double y)
    {
        var (column, row) = ((int)Math.Floor(x * 2), (int)Math.Floor(y * 2));
        var lane = (int)Math.Floor(y * 1.25);
        var copper = Scatter.Even(seed + 3, lane, (int)Math.Floor(x / 6)) > 0.55 && (y * 1.25) - lane < 0.3 ? 1.22 : 1;
        return copper * (0.97 + (0.06 * Scatter.Even(seed + 2, column, row)));
    }

    /// <summary>On the desk: the words above the board, the ruler below it.</summary>
    private static void Beside(Scene scene, Canvas canvas, int px, int py, double x, double y, string words)
    {
        const double pen = 0.07;
        var (tx, ty) = (x / TitleMm, (y + TitleMm + 1) / TitleMm);
        if (ty is > -0.5 and < 1.5)
        {
            canvas.Blend(px, py, Dark, 0.5 + ((pen - StrokeFont.Distance(words, tx, ty, 0.5)) * TitleMm * scene.PxPerMm));
        }

        if (scene.RulerMm <= 0) return;
        var (rx, ry) = (x, y - scene.BoardHeightMm - RulerGapMm);
        if (ry is < -0.3 or > 4 || rx < -2 || rx > scene.RulerMm + 2) return;
        canvas.Blend(px, py, Silk, 0.5 + (Math.Min(Math.Min(ry + 0.3, 4 - ry), Math.Min(rx + 2, scene.RulerMm + 2 - rx)) * scene.PxPerMm));
        var line = Math.Clamp(Math.Round(rx), 0, scene.RulerMm);
        var length = line % 10 == 0 ? 3 : line % 5 == 0 ? 2.2 : 1.4;
        canvas.Blend(px, py, Dark, ry >= 0 && ry <= length ? 0.5 + ((0.06 - Math.Abs(rx - line)) * scene.PxPerMm) : 0);
    }

    private static List<PicturePoint> Corners(ScenePart part, SceneCamera camera)
    {
        var (sin, cos) = (Elementary.Sin(part.TurnDegrees * Math.PI / 180), Elementary.Cos(part.TurnDegrees * Math.PI / 180));
        var (a, b) = (part.LengthMm / 2, part.WidthMm / 2);
        return [.. new[] { (-a, -b), (a, -b), (a, b), (-a, b) }.Select(at => camera.Show(
            part.X + (at.Item1 * cos) - (at.Item2 * sin), part.Y + (at.Item1 * sin) + (at.Item2 * cos), part.HeightMm))];
    }
}
