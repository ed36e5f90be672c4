using System.Globalization;
using System.Text;
using Lidoff.Numbers.Failing;
using Lidoff.Telling.Drawing.Labelling;
using Lidoff.Telling.Writing;

namespace Lidoff.Telling.Drawing;

/// <summary>
/// The few strokes a report needs, over a picture or on paper. Numbers are written with three decimals at most and without
/// culture, so the same drawing has the same bytes everywhere; text is escaped. Colours come from the style sheet by class.
/// </summary>
public sealed class SvgPen(double width, double height)
{
    private readonly StringBuilder body = new();

    /// <summary>What was drawn so far.</summary>
    public SvgDrawing Drawing => new(Guard.Positive(width), Guard.Positive(height), body.ToString());

    /// <summary>A picture of the report's own folder, filling the drawing.</summary>
    public SvgPen Picture(string file) => Picture(file, 0, 0, width, height);

    /// <summary>A picture of the report's own folder at its place in the drawing.</summary>
    public SvgPen Picture(string file, double x, double y, double w, double h)
    {
        body.Append(CultureInfo.InvariantCulture, $"<image href=\"{Escaping.RelativeFile(file)}\" x=\"{F(x)}\" y=\"{F(y)}\" width=\"{F(w)}\" height=\"{F(h)}\"/>");
        return this;
    }

    /// <summary>A straight line of class <paramref name="style"/>.</summary>
    public SvgPen Line(double x1, double y1, double x2, double y2, string style)
    {
        body.Append(CultureInfo.InvariantCulture, $"<line class=\"{Safe(style)}\" x1=\"{F(x1)}\" y1=\"{F(y1)}\" x2=\"{F(x2)}\" y2=\"{F(y2)}\"/>");
        return this;
    }

    /// <summary>An open ring.</summary>
    public SvgPen Ring(double x, double y, double radius, string style)
    {
        body.Append(CultureInfo.InvariantCulture, $"<circle class=\"{Safe(style)}\" cx=\"{F(x)}\" cy=\"{F(y)}\" r=\"{F(radius)}\"/>");
        return this;
    }

    /// <summary>A rectangle.</summary>
    public SvgPen Box(double x, double y, double w, double h, string style)
    {
        body.Append(CultureInfo.InvariantCulture, $"<rect class=\"{Safe(style)}\" x=\"{F(x)}\" y=\"{F(y)}\" width=\"{F(w)}\" height=\"{F(h)}\"/>");
        return this;
    }

    /// <summary>Words at a point; <paramref name="anchor"/> is start, middle or end.</summary>
    public SvgPen Words(double x, double y, string text, double size, string style, string anchor = "start")
    {
        body.Append(CultureInfo.InvariantCulture, $"<text class=\"{Safe(style)}\" x=\"{F(x)}\" y=\"{F(y)}\" font-size=\"{F(size)}\" text-anchor=\"{Safe(anchor)}\">{Safe(text)}</text>");
        return this;
    }

    /// <summary>A measured line: the line, ticks across its ends, and what it measures beyond its far end.</summary>
    public SvgPen Measured(double x1, double y1, double x2, double y2, string text, double size, string style)
    {
        var length = Math.Sqrt((x2 - x1) * (x2 - x1) + (y2 - y1) * (y2 - y1));
        var (nx, ny) = length > 0 ? ((y1 - y2) / length * size / 2, (x2 - x1) / length * size / 2) : (size / 2, 0);
        Line(x1, y1, x2, y2, style);
        Line(x1 - nx, y1 - ny, x1 + nx, y1 + ny, style);
        Line(x2 - nx, y2 - ny, x2 + nx, y2 + ny, style);
        // Words stand beyond the far end, so that two lengths that cross do not write over each other, and lean towards the
        // middle of the drawing, where there is room for them.
        var (ex, ey) = length > 0 ? (x2 + ((x2 - x1) / length * size * 0.7), y2 + ((y2 - y1) / length * size * 1.1)) : (x2, y2);
        return ex < width * 0.6
            ? Words(ex, Math.Clamp(ey, size, height - (size * 0.3)), text, size, style + "-words")
            : Words(ex, Math.Clamp(ey, size, height - (size * 0.3)), text, size, style + "-words", "end");
    }

    /// <summary>Labels beside the picture, each with its leader to a ring at its spot; the drawing must be as large as <paramref name="layout"/> says.</summary>
    public SvgPen Labels(LabelLayout layout, double size)
    {
        Guard.That(width >= layout.Width && height >= layout.Height, "a drawing with room for its labels");
        foreach (var place in layout.Places)
        {
            Line(place.Port.X, place.Port.Y, place.Tip.X, place.Tip.Y, "leader");
            Ring(place.Tip.X, place.Tip.Y, size * 0.35, "leader");
            Words(place.Left ? place.X + place.Width : place.X, place.Y + (place.Height * 0.75), place.Key, size, "leader-words", place.Left ? "end" : "start");
        }

        return this;
    }

    /// <summary>A scale bar at the lower left: <paramref name="pixels"/> long, with its length in words. <paramref name="left"/> moves it to the right.</summary>
    public SvgPen ScaleBar(double pixels, string text, double size, double left = 0)
    {
        var (x, y) = (left + size, height - size);
        Box(x - size * 0.4, y - size * 1.7, Math.Max(pixels, text.Length * size * 0.6) + size * 0.8, size * 2.2, "bar-ground");
        Line(x, y, x + pixels, y, "bar");
        return Words(x, y - size * 0.4, text, size, "bar-words");
    }

    private static string F(double value) => Math.Round(Guard.Finite(value), 3).ToString("0.###", CultureInfo.InvariantCulture);

    private static string Safe(string text) => Escaping.Html(text);
}
