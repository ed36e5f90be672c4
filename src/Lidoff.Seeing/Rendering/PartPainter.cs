using Lidoff.Numbers;

namespace Lidoff.Seeing.Rendering;

/// <summary>Paints one part: its shadow and leads on the board, its flanks, then its top with what stands on it.</summary>
internal static class PartPainter
{
    // Flanks are drawn as a stack of thin slices; four are enough for parts a few millimetres tall.
    private const int Slices = 4;

    // A low light throws shadows half again as long as the part is tall.
    private const double ShadowReach = 1.5;

    public static void Paint(ScenePart part, Scene scene, SceneCamera camera, Canvas canvas)
    {
        var (sin, cos) = (Elementary.Sin(part.TurnDegrees * Math.PI / 180), Elementary.Cos(part.TurnDegrees * Math.PI / 180));
        var shadow = Shadow(part, scene.Light);
        // Half the box around the turned part, with its leads, its shadow and two pixels for soft edges.
        var more = part.LeadMm + Math.Max(shadow.X, shadow.Y) + (2 / scene.PxPerMm) + (part.LeadMm > 0 ? 0.1 : 0);
        var (a, b) = ((part.LengthMm / 2) + more, (part.WidthMm / 2) + more);
        var (wide, high) = ((a * Math.Abs(cos)) + (b * Math.Abs(sin)), (a * Math.Abs(sin)) + (b * Math.Abs(cos)));
        var corners = new[] { (-wide, -high), (wide, -high), (wide, high), (-wide, high) }
            .SelectMany(at => new[] { 0, part.HeightMm }.Select(level => camera.Show(part.X + at.Item1, part.Y + at.Item2, level))).ToList();
        var (left, right) = ((int)Math.Max(0, corners.Min(c => c.X)), (int)Math.Min(scene.Width - 1, corners.Max(c => c.X)));
        var (top, bottom) = ((int)Math.Max(0, corners.Min(c => c.Y)), (int)Math.Min(scene.Height - 1, corners.Max(c => c.Y)));
        var light = scene.Light == Lighting.Flat ? 1 : 0.6;
        var (body, flank) = (PartSkin.Body(part).Times(light), PartSkin.Body(part).Times(0.55 * light));
        var stands = part.HeightMm > 0 || part.LeadMm > 0;
        for (var py = top; py <= bottom; py++)
        {
            for (var px = left; px <= right; px++)
            {
                var (x, y) = camera.See(px + 0.5, py + 0.5, part.HeightMm);
                var (u, v) = (((x - part.X) * cos) + ((y - part.Y) * sin), ((y - part.Y) * cos) - ((x - part.X) * sin));
                var cover = 0.5 + (Inside(part, u, v) * scene.PxPerMm);
                if (cover < 1 && stands) Below(part, scene, camera, canvas, px, py, (sin, cos), shadow, light, flank, Math.Clamp(cover, 0, 1));
                if (cover <= 0) continue;
                canvas.Blend(px, py, body, cover * PartSkin.Density(part));
                PartSkin.Paint(part, scene, canvas, px, py, u, v, cover, light);
                MarkPainter.Paint(part, scene, canvas, px, py, u, v, cover);
            }
        }
    }

    /// <summary>How far (u, v) lies inside the part's outline, mm; below zero outside.</summary>
    private static double Inside(ScenePart part, double u, double v)
    {
        var (a, b) = ((part.LengthMm / 2) - Math.Abs(u), (part.WidthMm / 2) - Math.Abs(v));
        var round = PartSkin.Round(part);
        if (round <= 0) return Math.Min(a, b);
        var (p, q) = (round - a, round - b);
        if (p <= 0 || q <= 0) return Math.Min(a, b);
        return round - Math.Sqrt((p * p) + (q * q));
    }

    private static void Below(
        ScenePart part, Scene scene, SceneCamera camera, Canvas canvas, int px, int py, (double Sin, double Cos) turn, (double X, double Y) shadow, double light, in Ink flank, double top)
    {
        var cover = 0.0;
        for (var slice = 0; slice < Slices; slice++)
        {
            var (x, y) = camera.See(px + 0.5, py + 0.5, part.HeightMm * slice / Slices);
            var (dx, dy) = (x - part.X, y - part.Y);
            var (u, v) = ((dx * turn.Cos) + (dy * turn.Sin), (dy * turn.Cos) - (dx * turn.Sin));
            if (slice == 0)
            {
                if (shadow.X + shadow.Y > 0)
                {
                    // The shadow's soft edge is a quarter of its length.
                    var (su, sv) = (((dx - shadow.X) * turn.Cos) + ((dy - shadow.Y) * turn.Sin), ((dy - shadow.Y) * turn.Cos) - ((dx - shadow.X) * turn.Sin));
                    canvas.Blend(px, py, new(14, 14, 14), 0.6 * Math.Clamp(0.5 + (Inside(part, su, sv) / (0.25 * (shadow.X + shadow.Y))), 0, 1));
                }

                if (part.LeadMm > 0) LeadPainter.Paint(part, scene, canvas, px, py, u, v, light);
            }

            if (part.HeightMm <= 0) return;
            cover = Math.Max(cover, 0.5 + (Inside(part, u, v) * scene.PxPerMm));
        }

        // Slices and top hide the same share of a pixel at the outline, not one share after the other: its edge would stand out by half a pixel.
        if (cover > top) canvas.Blend(px, py, flank, (Math.Min(1, cover) - top) / (1 - top) * PartSkin.Density(part));
    }

    private static (double X, double Y) Shadow(ScenePart part, Lighting light) => light switch
    {
        Lighting.RakingLeft => (ShadowReach * part.HeightMm / 2, 0),
        Lighting.RakingTop => (0, ShadowReach * part.HeightMm / 2),
        _ => (0, 0),
    };
}
