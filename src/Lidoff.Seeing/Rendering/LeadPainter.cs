namespace Lidoff.Seeing.Rendering;

/// <summary>Paints a chip's leads or solder fillets on the board around its body.</summary>
internal static class LeadPainter
{
    public static void Paint(ScenePart part, Scene scene, Canvas canvas, int px, int py, double u, double v, double light)
    {
        var each = (part.Ways - (2 * part.EndLeads)) / part.LeadSides;
        if (each < 1) return;
        Row(part, scene, canvas, px, py, u, Math.Abs(v) - (part.WidthMm / 2), each, light);
        if (part.EndLeads > 0) Row(part, scene, canvas, px, py, v, Math.Abs(u) - (part.LengthMm / 2), part.EndLeads, light);
        if (part.LeadSides == 4) Row(part, scene, canvas, px, py, v, Math.Abs(u) - (part.LengthMm / 2), each, light);
    }

    private static void Row(ScenePart part, Scene scene, Canvas canvas, int px, int py, double along, double beyond, int each, double light)
    {
        if (beyond < -part.LeadMm || beyond > part.LeadMm + 0.1) return;
        var lead = Math.Clamp(Math.Round((along / part.PitchMm) + ((each - 1) / 2.0)), 0, each - 1);
        var off = Math.Abs(along - ((lead - ((each - 1) / 2.0)) * part.PitchMm));
        var inside = Math.Min((part.PitchMm * 0.27) - off, part.LeadMm - beyond);
        canvas.Blend(px, py, PartSkin.Metal.Times(light * (0.92 - (0.3 * Math.Clamp(beyond / part.LeadMm, 0, 1)))), 0.5 + (inside * scene.PxPerMm));
    }
}
