using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Rendering;

namespace Lidoff.Tests.Commands;

/// <summary>
/// A sheet on the bench, photographed by a pinhole camera that may lean about the picture's level line: a checkerboard or a dot grid of 13 × 8 places and, below
/// it, a ruler of 40 mm. Places of the sheet in mm from the first corner or dot, y downwards. Made here ray by ray; nothing of it is taken from the program's own camera.
/// </summary>
internal sealed record BenchPaper
{
    public const int Width = 1200;
    public const int Height = 900;

    private double PxPerMm => 24 * Zoom;

    // Half a picture's width over this: a lens of 1.5 long sides.
    private const double Focal = 1.5 * Width;

    // The place in the picture's middle.
    private const double MiddleX = 12;
    private const double MiddleY = 12;

    private const int Columns = 13;
    private const int Rows = 8;

    private const double RulerTop = 19;

    private const double RulerLeft = -8;

    /// <summary>From one corner or dot to the next, mm.</summary>
    public double PitchMm { get; init; } = 2;

    /// <summary>Whether there are squares.</summary>
    public bool Checker { get; init; }

    /// <summary>Whether there are dots.</summary>
    public bool Dots { get; init; }

    /// <summary>Gaps between the ruler's lines, and their length, mm; none for no ruler.</summary>
    public (int Gaps, double TickMm)? Ruler { get; init; }

    /// <summary>Every how many lines a longer one stands.</summary>
    public int[] Longer { get; init; } = [5, 10];

    /// <summary>A dark body: its left and top, its width and height, mm, and its turn about its middle; none for no body.</summary>
    public (double X, double Y, double W, double H, double TurnDegrees)? Body { get; init; }

    public double SlantDegrees { get; init; }

    /// <summary>How much larger everything shows than at 24 px/mm: by another focal length, so that the distance stays.</summary>
    public double Zoom { get; init; } = 1;

    /// <summary>The lens's radial term: a place at r half long sides from the middle belongs at r·(1 + bend·r²).</summary>
    public double Bend { get; init; }

    /// <summary>Where a place of the sheet shows.</summary>
    public PicturePoint Show(double x, double y)
    {
        var (sin, cos) = Math.SinCos(SlantDegrees * Math.PI / 180);
        var depth = (Focal / PxPerMm) + ((y - MiddleY) * sin);
        var (u, v) = (Focal * (x - MiddleX) / depth, Focal * (y - MiddleY) * cos / depth);
        var straight = 2 * Math.Sqrt((u * u) + (v * v)) / Width;
        var r = straight;
        for (var i = 0; i < 40; i++) r = straight / (1 + (Bend * r * r));
        var times = straight > 0 ? r / straight : 1;
        return new((Width / 2.0) + (times * u), (Height / 2.0) + (times * v));
    }

    /// <summary>Both ends of a length on the sheet, as a job takes them.</summary>
    public (double[] From, double[] To) Chord(double x1, double y1, double x2, double y2)
    {
        var (a, b) = (Show(x1, y1), Show(x2, y2));
        return ([a.X, a.Y], [b.X, b.Y]);
    }

    /// <summary>The picture as PNG, edges softened by nine looks a pixel, with grain.</summary>
    public byte[] Png()
    {
        var pixels = new byte[Width * Height * 3];
        for (var i = 0; i < Width * Height; i++)
        {
            var ink = 0.0;
            for (var s = 0; s < 9; s++)
            {
                var (x, y) = Under((i % Width) + (((s % 3) + 0.5) / 3), (i / Width) + (((s / 3) + 0.5) / 3));
                ink += Ink(x, y) / 9;
            }

            // Grain of two steps, a sum of even values as good as a normal one, by a linear congruence of its place (Numerical Recipes' constants).
            var grain = 0.0;
            for (uint k = 0, word = (uint)i; k < 4; k++) grain += ((word = ((word ^ (word >> 15)) * 1_664_525) + 1_013_904_223 + (k * 977)) >> 16) / 65536.0;
            pixels[3 * i] = pixels[(3 * i) + 1] = pixels[(3 * i) + 2] = (byte)Math.Clamp(Math.Round(205 - (160 * ink) + (3.5 * (grain - 2))), 0, 255);
        }

        using var stream = new MemoryStream();
        new RenderedScene(Brindle.LampTop() with { Orientation = 1 }, Width, Height, pixels, [], [], null).WritePng(stream);
        return stream.ToArray();
    }

    private (double X, double Y) Under(double px, double py)
    {
        var (sin, cos) = Math.SinCos(SlantDegrees * Math.PI / 180);
        var (dx, dy) = (px - (Width / 2.0), py - (Height / 2.0));
        var grown = 1 + (Bend * 4 * ((dx * dx) + (dy * dy)) / Width / Width);
        var (u, v) = (dx * grown / Focal, dy * grown / Focal);
        // v·(Z + y·sin) = y·cos, solved for y.
        var y = v * (Focal / PxPerMm) / (cos - (v * sin));
        return (MiddleX + (u * ((Focal / PxPerMm) + (y * sin))), MiddleY + y);
    }

    private double Ink(double x, double y)
    {
        var (c, r) = (x / PitchMm, y / PitchMm);
        if (Checker && c >= -1 && r >= -1 && c < Columns && r < Rows) return ((int)Math.Floor(c) + (int)Math.Floor(r)) % 2 == 0 ? 1 : 0;
        if (Dots && Math.Round(c) is >= 0 and < Columns && Math.Round(r) is >= 0 and < Rows) return Math.Sqrt(Square(c - Math.Round(c)) + Square(r - Math.Round(r))) < 0.25 ? 1 : 0;
        if (Body is { } body)
        {
            var (u, v) = (x - body.X - (body.W / 2), y - body.Y - (body.H / 2));
            var (sin, cos) = Math.SinCos(body.TurnDegrees * Math.PI / 180);
            if (Math.Abs((cos * u) + (sin * v)) < body.W / 2 && Math.Abs((cos * v) - (sin * u)) < body.H / 2) return 0.9;
        }

        if (Ruler is not var (gaps, tick)) return 0.25;
        var number = (int)Math.Round((x - RulerLeft) / tick);
        if (y is < RulerTop - 0.5 or > RulerTop + 8 || x < RulerLeft - 2 || x > RulerLeft + (gaps * tick) + 2) return 0.25;
        // Lines 0.12 mm wide and 2 mm long, 1.2 mm more for each ruling a number belongs to.
        var longer = Longer.Count(every => number % every == 0);
        return number >= 0 && number <= gaps && Math.Abs(x - RulerLeft - (number * tick)) < 0.06 && y >= RulerTop && y < RulerTop + 2 + (1.2 * longer) ? 1 : 0;
    }

    private static double Square(double x) => x * x;
}
