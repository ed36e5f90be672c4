using System.Globalization;
using System.Text;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Lettering;
using Lidoff.Seeing.Pictures;
using Lidoff.Telling.Writing;

namespace Lidoff.Telling.Drawing.Labelling;

/// <summary>
/// A drawing of boxes, strokes and words over one picture, written as SVG or as PNG from the same list. Words are strokes of our own in
/// both; where a text has letters that are not drawn there, the SVG carries it as text, fitted to the same place, and the PNG shows boxes.
/// </summary>
internal sealed class DrawnSheet(int width, int height, string ground)
{
    private readonly List<Piece> pieces = [];

    public int Width => width;

    public int Height => height;

    public void Picture(ShownPicture picture, double x, double y) => pieces.Add(new() { Shown = picture, X = x, Y = y });

    public void Box(double x, double y, double w, double h, string ink) => pieces.Add(new() { X = x, Y = y, W = w, H = h, Ink = ink });

    /// <summary>Strokes with a dark halo around them, so that they stand out from any ground.</summary>
    public void Strokes(IReadOnlyList<LetterStroke> strokes, double pen, string ink, string halo, double rim)
    {
        if (rim > 0) pieces.Add(new() { Strokes = strokes, Pen = pen + (2 * rim), Ink = halo });
        pieces.Add(new() { Strokes = strokes, Pen = pen, Ink = ink });
    }

    /// <summary>A line of clean text; (x, y) is the top left corner of its first capital, <paramref name="size"/> its cap height.</summary>
    public void Words(string text, double x, double y, double size, string ink, double weight)
    {
        if (text.Length == 0) return;
        pieces.Add(new() { Strokes = LetterShapes.Line(text, x, y, size), Pen = size * weight, Ink = ink, Text = LetterShapes.Knows(text) ? null : text, X = x, Y = y + size, W = LetterShapes.Width(text) * size, H = size });
    }

    public string Svg(string title, string description)
    {
        var svg = new StringBuilder();
        svg.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width}\" height=\"{height}\" viewBox=\"0 0 {width} {height}\" role=\"img\">\n");
        svg.Append("<title>").Append(Escaping.Html(title)).Append("</title>\n<desc>").Append(Escaping.Html(description)).Append("</desc>\n");
        svg.Append(CultureInfo.InvariantCulture, $"<rect width=\"{width}\" height=\"{height}\" fill=\"{ground}\"/>\n");
        foreach (var piece in pieces)
        {
            if (piece.Shown is { } shown)
            {
                svg.Append(CultureInfo.InvariantCulture, $"<image x=\"{F(piece.X)}\" y=\"{F(piece.Y)}\" width=\"{shown.Width}\" height=\"{shown.Height}\" href=\"data:image/jpeg;base64,{Convert.ToBase64String(shown.Jpeg)}\"/>\n");
            }
            else if (piece.Text is { } text)
            {
                svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{F(piece.X)}\" y=\"{F(piece.Y)}\" font-family=\"sans-serif\" font-size=\"{F(piece.H * EmPerCap)}\" textLength=\"{F(piece.W)}\" lengthAdjust=\"spacingAndGlyphs\" fill=\"{piece.Ink}\">{Escaping.Html(text)}</text>\n");
            }
            else if (piece.Strokes is { } strokes)
            {
                svg.Append(CultureInfo.InvariantCulture, $"<path fill=\"none\" stroke=\"{piece.Ink}\" stroke-width=\"{F(piece.Pen)}\" stroke-linecap=\"round\" stroke-linejoin=\"round\" d=\"");
                foreach (var stroke in strokes) Path(svg, stroke.Points);
                svg.Append("\"/>\n");
            }
            else
            {
                svg.Append(CultureInfo.InvariantCulture, $"<rect x=\"{F(piece.X)}\" y=\"{F(piece.Y)}\" width=\"{F(piece.W)}\" height=\"{F(piece.H)}\" fill=\"{piece.Ink}\"/>\n");
            }
        }

        return svg.Append("</svg>\n").ToString();
    }

    public byte[] Png()
    {
        var sheet = new PixelSheet(width, height, Rgb(ground));
        foreach (var piece in pieces)
        {
            if (piece.Shown is { } shown) sheet.Lay(shown, (int)Math.Round(piece.X), (int)Math.Round(piece.Y));
            else if (piece.Strokes is { } strokes) sheet.Draw(strokes, piece.Pen, Rgb(piece.Ink));
            else sheet.Fill(piece.X, piece.Y, piece.W, piece.H, Rgb(piece.Ink));
        }

        return sheet.Png();
    }

    // Cap height of common sans-serif faces is near 0.72 em.
    private const double EmPerCap = 1 / 0.72;

    private static void Path(StringBuilder svg, IReadOnlyList<PicturePoint> points)
    {
        for (var i = 0; i < points.Count; i++) svg.Append(i == 0 ? 'M' : 'L').Append(F(points[i].X)).Append(' ').Append(F(points[i].Y));
    }

    private static string F(double value) => Math.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture);

    private static int Rgb(string ink) => Convert.ToInt32(ink[1..], 16);

    private sealed record Piece
    {
        public ShownPicture? Shown { get; init; }

        public IReadOnlyList<LetterStroke>? Strokes { get; init; }

        public string? Text { get; init; }

        public double X { get; init; }

        public double Y { get; init; }

        public double W { get; init; }

        public double H { get; init; }

        public double Pen { get; init; }

        public string Ink { get; init; } = "#000000";
    }
}
