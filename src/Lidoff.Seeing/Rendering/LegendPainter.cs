namespace Lidoff.Seeing.Rendering;

/// <summary>Writes the legend on a strip along the picture's lower edge, so that no rendered picture can pass for a real one.</summary>
internal static class LegendPainter
{
    private const int StripPx = 22;
    private const double CapPx = 9;
    private const double PenPx = 0.75;

    private static readonly Ink Strip = new(236, 232, 222);
    private static readonly Ink Words = new(60, 56, 50);

    public static void Paint(string legend, Canvas canvas)
    {
        for (var py = Math.Max(0, canvas.Height - StripPx); py < canvas.Height; py++)
        {
            for (var px = 0; px < canvas.Width; px++)
            {
                canvas.Blend(px, py, Strip, 1);
                var (x, y) = ((px + 0.5 - 8) / CapPx, (py + 0.5 - (canvas.Height - (StripPx / 2.0) - (CapPx / 2))) / CapPx);
                canvas.Blend(px, py, Words, 0.5 + PenPx - (StrokeFont.Distance(legend, x, y, 0.4) * CapPx));
            }
        }
    }
}
