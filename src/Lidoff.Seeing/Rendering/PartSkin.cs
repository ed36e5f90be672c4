namespace Lidoff.Seeing.Rendering;

/// <summary>What the top of a part looks like besides its mark.</summary>
internal static class PartSkin
{
    public static readonly Ink Metal = new(188, 188, 184);

    private static readonly Ink Gold = new(206, 172, 86);
    private static readonly Ink Dark = new(40, 38, 36);
    private static readonly Ink Copper = new(176, 112, 58);

    /// <summary>Its body's colour.</summary>
    public static Ink Body(ScenePart part) => part.Tint switch
    {
        PartTint.Black => new(52, 52, 56),
        PartTint.White => new(228, 226, 220),
        PartTint.Silver => new(198, 200, 204),
        PartTint.Amber => new(190, 120, 44),
        PartTint.Green => new(28, 92, 52),
        PartTint.Blue => new(30, 62, 120),
        PartTint.Glass => new(126, 134, 128),
        PartTint.Orange => new(214, 104, 38),
        PartTint.Gap => new(16, 16, 18),
        _ => Usual(part.Shape),
    };

    /// <summary>True where a mark must be dark to be seen.</summary>
    public static bool IsBright(ScenePart part) =>
        part.Tint is PartTint.White or PartTint.Silver or PartTint.Amber or PartTint.Glass or PartTint.Orange || (part.Tint == PartTint.Usual && part.Shape == PartShape.Can);

    /// <summary>How much of what lies below it hides, 0 to 1.</summary>
    public static double Density(ScenePart part) => part.Shape == PartShape.Blob ? 0.72 : 1;

    /// <summary>Radius of its corners, mm.</summary>
    public static double Round(ScenePart part) => part.Shape switch
    {
        PartShape.Blob or PartShape.Hole => Math.Min(part.LengthMm, part.WidthMm) / 2,
        PartShape.Box or PartShape.Pad => Math.Min(part.RoundMm, Math.Min(part.LengthMm, part.WidthMm) / 2),
        _ => 0,
    };

    /// <summary>Paints a pixel of the top at (u, v), mm from its middle.</summary>
    public static void Paint(ScenePart part, Scene scene, Canvas canvas, int px, int py, double u, double v, double cover, double light)
    {
        void Blend(in Ink ink, double insideMm, double most = 1) => canvas.Blend(px, py, ink.Times(light), Math.Min(Math.Min(cover, most), 0.5 + (insideMm * scene.PxPerMm)));
        switch (part.Shape)
        {
            case PartShape.Passive:
                Blend(Metal, Math.Abs(u) - (part.LengthMm * 0.3));
                break;
            case PartShape.Connector when part.Ways > 0:
                if (v > 0) Blend(Gold, (part.PitchMm * 0.25) - Off(part, u));
                break;
            case PartShape.Cable when part.Ways > 0:
                Blend(Copper, (part.PitchMm * 0.3) - Off(part, v));
                if (Math.Abs(u) > (part.LengthMm / 2) - 3) Blend(Metal, (part.PitchMm * 0.3) - Off(part, v));
                break;
            case PartShape.Hole:
                Blend(Dark, (part.LengthMm * 0.32) - Math.Sqrt((u * u) + (v * v)));
                break;
            case PartShape.Blob:
                var (hu, hv) = (u + (part.LengthMm * 0.2), v + (part.WidthMm * 0.2));
                Blend(new(246, 240, 224), (0.12 * Math.Min(part.LengthMm, part.WidthMm)) - Math.Sqrt((hu * hu) + (hv * hv)), 0.7);
                break;
            case PartShape.Graticule:
                var line = Math.Round((u + (part.LengthMm / 2)) * 2) / 2;
                var tall = part.WidthMm * (line % 1 == 0 ? 0.8 : 0.45);
                if (v + (part.WidthMm / 2) <= tall) Blend(Dark, 0.025 - Math.Abs(u + (part.LengthMm / 2) - line));
                break;
            case PartShape.Chip:
                var dot = 0.04 * Math.Min(part.LengthMm, part.WidthMm);
                var (du, dv) = (u + (part.LengthMm / 2) - (2 * dot), v + (part.WidthMm / 2) - (2 * dot));
                Blend(MarkPainter.Laser, dot - Math.Sqrt((du * du) + (dv * dv)));
                break;
            default:
                break;
        }
    }

    private static double Off(ScenePart part, double along)
    {
        var way = Math.Clamp(Math.Round((along / part.PitchMm) + ((part.Ways - 1) / 2.0)), 0, part.Ways - 1);
        return Math.Abs(along - ((way - ((part.Ways - 1) / 2.0)) * part.PitchMm));
    }

    private static Ink Usual(PartShape shape) => shape switch
    {
        PartShape.Chip => new(44, 44, 46),
        PartShape.Can => Metal,
        PartShape.Passive => new(150, 120, 84),
        PartShape.Pad or PartShape.Hole => Gold,
        PartShape.Cable => new(190, 120, 44),
        PartShape.Blob => new(196, 178, 130),
        PartShape.Graticule => new(232, 236, 236),
        PartShape.Box => new(52, 52, 56),
        _ => new(222, 216, 196),
    };
}
