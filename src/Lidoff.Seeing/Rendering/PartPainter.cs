using Lidoff.Numbers;

namespace Lidoff.Seeing.Rendering;

/// <summary>Paints one part: its flanks from the board up, then its top with what stands on it.</summary>
internal static class PartPainter
{
    // Flanks are drawn as a stack of thin slices; four are enough for parts a few millimetres tall.
    private const int Slices = 4;

    private static readonly Ink Mould = new(44, 44, 46);
    private static readonly Ink LaserMark = new(126, 124, 118);
    private static readonly Ink Metal = new(188, 188, 184);
    private static readonly Ink Ceramic = new(150, 120, 84);
    private static readonly Ink Ivory = new(222, 216, 196);
    private static readonly Ink Gold = new(206, 172, 86);

    public static void Paint(ScenePart part, Scene scene, SceneCamera camera, Canvas canvas)
    {
        var (sin, cos) = (Elementary.Sin(part.TurnDegrees * Math.PI / 180), Elementary.Cos(part.TurnDegrees * Math.PI / 180));
        var reach = (Math.Sqrt((part.LengthMm * part.LengthMm) + (part.WidthMm * part.WidthMm)) / 2) + 0.5;
        var corners = new[] { (-reach, -reach), (reach, -reach), (reach, reach), (-reach, reach) }
            .SelectMany(at => new[] { 0, part.HeightMm }.Select(level => camera.Show(part.X + at.Item1, part.Y + at.Item2, level))).ToList();
        var (left, right) = ((int)Math.Max(0, corners.Min(c => c.X)), (int)Math.Min(scene.Width - 1, corners.Max(c => c.X)));
        var (top, bottom) = ((int)Math.Max(0, corners.Min(c => c.Y)), (int)Math.Min(scene.Height - 1, corners.Max(c => c.Y)));
        for (var py = top; py <= bottom; py++)
        {
            for (var px = left; px <= right; px++)
            {
                for (var slice = 0; slice <= Slices; slice++)
                {
                    var (x, y) = camera.See(px + 0.5, py + 0.5, part.HeightMm * slice / Slices);
                    var (u, v) = (((x - part.X) * cos) + ((y - part.Y) * sin), ((y - part.Y) * cos) - ((x - part.X) * sin));
                    var inside = Math.Min((part.LengthMm / 2) - Math.Abs(u), (part.WidthMm / 2) - Math.Abs(v));
                    var cover = 0.5 + (inside * scene.PxPerMm);
                    if (cover <= 0) continue;
                    if (slice < Slices) canvas.Blend(px, py, Body(part).Times(0.55), cover);
                    else Top(part, scene, canvas, px, py, u, v, cover);
                }
            }
        }
    }

    private static Ink Body(ScenePart part) => part.Shape switch
    {
        PartShape.Chip => Mould,
        PartShape.Can => Metal,
        PartShape.Passive => Ceramic,
        _ => Ivory,
    };

    private static void Top(ScenePart part, Scene scene, Canvas canvas, int px, int py, double u, double v, double cover)
    {
        canvas.Blend(px, py, Body(part), cover);
        switch (part.Shape)
        {
            case PartShape.Passive:
                canvas.Blend(px, py, Metal, Math.Min(cover, 0.5 + ((Math.Abs(u) - (part.LengthMm * 0.3)) * scene.PxPerMm)));
                break;
            case PartShape.Connector when part.Ways > 0:
                var way = Math.Clamp(Math.Round((u / part.PitchMm) + ((part.Ways - 1) / 2.0)), 0, part.Ways - 1);
                var off = Math.Abs(u - ((way - ((part.Ways - 1) / 2.0)) * part.PitchMm));
                if (v > 0) canvas.Blend(px, py, Gold, Math.Min(cover, 0.5 + (((part.PitchMm * 0.25) - off) * scene.PxPerMm)));
                break;
            case PartShape.Chip:
                var dot = 0.04 * Math.Min(part.LengthMm, part.WidthMm);
                var (du, dv) = (u + (part.LengthMm / 2) - (2 * dot), v + (part.WidthMm / 2) - (2 * dot));
                canvas.Blend(px, py, LaserMark, Math.Min(cover, 0.5 + ((dot - Math.Sqrt((du * du) + (dv * dv))) * scene.PxPerMm)));
                break;
            default:
                break;
        }

        Mark(part, scene, canvas, px, py, u, v, cover);
    }

    private static void Mark(ScenePart part, Scene scene, Canvas canvas, int px, int py, double u, double v, double cover)
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
        var pen = (0.075 - StrokeFont.Distance(text, x, y, 0.4)) * cap * scene.PxPerMm;
        if (pen < -0.5) return;
        // Wear fades from the right end; laser spots leave a slightly uneven line.
        var faded = part.Wear <= 0 ? 0 : Math.Clamp((u / part.LengthMm) + 0.5 - (1 - part.Wear) + 0.15, 0, 0.3) / 0.3;
        var spots = 0.8 + (0.4 * Scatter.Even(scene.Seed + 5, px, py));
        canvas.Blend(px, py, LaserMark.Times(part.Shape == PartShape.Can ? 0.4 : 1), Math.Min(cover, Math.Min(1, 0.5 + pen) * (1 - faded) * spots));
    }
}
