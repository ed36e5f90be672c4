using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Edges;
using Lidoff.Seeing.Measuring.Targets;
using Lidoff.Seeing.Rendering;
using NetVips;

namespace Lidoff.Seeing.Tests.Measuring.Targets;

/// <summary>
/// A target photographed by a pinhole camera with one radial term, pixel by pixel along rays, with blur, grain and compression: nothing of
/// it is taken from the program's own camera. Places on the target in mm from the middle of its first square or dot.
/// </summary>
internal sealed record TargetScene(TargetPattern Pattern, int Columns, int Rows, double PitchMm)
{
    public int Width { get; init; } = 1000;

    public int Height { get; init; } = 750;

    /// <summary>px per mm where the axis meets the target's plane.</summary>
    public double PxPerMm { get; init; } = 20;

    /// <summary>Focal length in half long sides.</summary>
    public double Focal { get; init; } = 3;

    public double SlantDegrees { get; init; }

    /// <summary>Direction of the slope.</summary>
    public double TowardsDegrees { get; init; } = 30;

    public double TurnDegrees { get; init; }

    public double Bend { get; init; }

    /// <summary>Where the target's own middle lies in the plane, mm from the axis, along the picture's own directions.</summary>
    public (double X, double Y) Off { get; init; }

    public double BlurPx { get; init; } = 0.8;

    public double Grain { get; init; } = 2;

    public int? Jpeg { get; init; } = 90;

    /// <summary>Diameter of a dot as a share of the pitch.</summary>
    public double Dot { get; init; } = 0.5;

    /// <summary>How high the middle of the paper stands above its two edges, mm.</summary>
    public double BowMm { get; init; }

    /// <summary>What covers it: left, top, right and bottom, as shares of the picture.</summary>
    public (double L, double T, double R, double B)? Covered { get; init; }

    /// <summary>Brightness of ink and of paper.</summary>
    public (double Ink, double Paper) Tones { get; init; } = (45, 205);

    public int Seed { get; init; } = 1;

    public PictureFrame Frame => new(Width, Height);

    private double Half => Math.Max(Width, Height) / 2.0;

    private double Distance => Focal * Half / PxPerMm;

    private (double X, double Y, double Z) Normal
    {
        get
        {
            var (t, a) = (SlantDegrees * Math.PI / 180, TowardsDegrees * Math.PI / 180);
            return (Math.Sin(t) * Math.Cos(a), Math.Sin(t) * Math.Sin(a), Math.Cos(t));
        }
    }

    // Two directions of the plane at a right angle: the picture's right turned about, laid into the plane.
    private ((double X, double Y, double Z) One, (double X, double Y, double Z) Two) Axes
    {
        get
        {
            var (n, turn) = (Normal, TurnDegrees * Math.PI / 180);
            (double X, double Y, double Z) right = (1 - (n.X * n.X), -n.X * n.Y, -n.X * n.Z);
            var long1 = Math.Sqrt((right.X * right.X) + (right.Y * right.Y) + (right.Z * right.Z));
            right = (right.X / long1, right.Y / long1, right.Z / long1);
            var down = (X: (n.Y * right.Z) - (n.Z * right.Y), Y: (n.Z * right.X) - (n.X * right.Z), Z: (n.X * right.Y) - (n.Y * right.X));
            var (c, s) = (Math.Cos(turn), Math.Sin(turn));
            return (
                ((c * right.X) + (s * down.X), (c * right.Y) + (s * down.Y), (c * right.Z) + (s * down.Z)),
                ((c * down.X) - (s * right.X), (c * down.Y) - (s * right.Y), (c * down.Z) - (s * right.Z)));
        }
    }

    /// <summary>Extent of the target, mm.</summary>
    private (double X, double Y) Far => ((Columns - 1) * PitchMm, (Rows - 1) * PitchMm);

    /// <summary>Where a place of the plane shows, px; <paramref name="heightMm"/> above it towards the camera.</summary>
    public PicturePoint Show(double x, double y, double heightMm = 0)
    {
        var (one, two) = Axes;
        var (u, v) = (x - (Far.X / 2), y - (Far.Y / 2));
        var n = Normal;
        var px = Off.X + (u * one.X) + (v * two.X) - (heightMm * n.X);
        var py = Off.Y + (u * one.Y) + (v * two.Y) - (heightMm * n.Y);
        // Off lies in the plane, so its depth follows.
        var pz = Distance - (((Off.X * n.X) + (Off.Y * n.Y)) / n.Z) + (u * one.Z) + (v * two.Z) - (heightMm * n.Z);
        return Picture(Focal * px / pz, Focal * py / pz);
    }

    private PicturePoint Picture(double x, double y)
    {
        var straight = Math.Sqrt((x * x) + (y * y));
        var r = straight;
        for (var i = 0; i < 30; i++) r = straight / (1 + (Bend * r * r));
        var times = straight > 0 ? r / straight : 1;
        return new((Width / 2.0) + (x * times * Half), (Height / 2.0) + (y * times * Half));
    }

    /// <summary>The place of the plane that shows at a place of the picture, mm.</summary>
    public (double X, double Y) Under(double px, double py) => Under(px, py, Normal, Axes);

    private (double X, double Y) Under(double px, double py, (double X, double Y, double Z) n, ((double X, double Y, double Z) One, (double X, double Y, double Z) Two) axes)
    {
        var (x, y) = ((px - (Width / 2.0)) / Half, (py - (Height / 2.0)) / Half);
        var grown = 1 + (Bend * ((x * x) + (y * y)));
        (x, y) = (x * grown / Focal, y * grown / Focal);
        var (one, two) = axes;
        var z0 = Distance - (((Off.X * n.X) + (Off.Y * n.Y)) / n.Z);
        var height = 0.0;
        var (u, v) = (0.0, 0.0);
        for (var round = 0; round < (BowMm > 0 ? 4 : 1); round++)
        {
            // The plane through the target's middle, lifted by the bow at the place found last.
            var (cx, cy, cz) = (Off.X - (height * n.X), Off.Y - (height * n.Y), z0 - (height * n.Z));
            var depth = ((cx * n.X) + (cy * n.Y) + (cz * n.Z)) / ((x * n.X) + (y * n.Y) + n.Z);
            var (rx, ry, rz) = ((x * depth) - cx, (y * depth) - cy, depth - cz);
            u = (rx * one.X) + (ry * one.Y) + (rz * one.Z);
            v = (rx * two.X) + (ry * two.Y) + (rz * two.Z);
            height = BowMm * Math.Max(0, 1 - Math.Pow(2 * u / Math.Max(1e-9, Far.X), 2));
        }

        return (u + (Far.X / 2), v + (Far.Y / 2));
    }

    /// <summary>Ink, 0 to 1, at a place of the plane.</summary>
    private double Ink(double x, double y)
    {
        var (c, r) = (x / PitchMm, y / PitchMm);
        if (Pattern == TargetPattern.Checker)
        {
            // One square more than inner corners on every side.
            var (i, j) = ((int)Math.Floor(c), (int)Math.Floor(r));
            return i < -1 || j < -1 || i >= Columns || j >= Rows ? 0 : (i + j) % 2 == 0 ? 1 : 0;
        }

        var (dc, dr) = (Math.Round(c), Math.Round(r));
        return dc < 0 || dr < 0 || dc >= Columns || dr >= Rows ? 0 : Math.Sqrt(((c - dc) * (c - dc)) + ((r - dr) * (r - dr))) < Dot / 2 ? 1 : 0;
    }

    /// <summary>The picture, bright as the program reads it.</summary>
    public GreyPicture Grey()
    {
        const int fine = 3;
        var (normal, axes) = (Normal, Axes);
        double At(double px, double py)
        {
            if (Covered is var (l, t, r, b) && px > l * Width && px < r * Width && py > t * Height && py < b * Height) return 0.4;
            var (u, v) = Under(px, py, normal, axes);
            return Ink(u, v);
        }

        // Ink at the corners of all pixels; within a pixel it is looked for only where they differ.
        var corners = new double[(Width + 1) * (Height + 1)];
        for (var i = 0; i < corners.Length; i++) corners[i] = At(i % (Width + 1), i / (Width + 1));
        var values = new float[Width * Height];
        for (var y = 0; y < Height; y++)
        {
            for (var x = 0; x < Width; x++)
            {
                var at = (y * (Width + 1)) + x;
                var ink = corners[at];
                if (corners[at + 1] != ink || corners[at + Width + 1] != ink || corners[at + Width + 2] != ink)
                {
                    ink = 0;
                    for (var s = 0; s < fine * fine; s++) ink += At(x + (((s % fine) + 0.5) / fine), y + (((s / fine) + 0.5) / fine)) / (fine * fine);
                }

                values[(y * Width) + x] = (float)(Tones.Paper + ((Tones.Ink - Tones.Paper) * ink));
            }
        }

        var bytes = new byte[Width * Height];
        using var sharp = Image.NewFromMemory(values, Width, Height, 1, Enums.BandFormat.Float);
        using var soft = BlurPx > 0 ? sharp.Gaussblur(BlurPx) : sharp.Copy();
        var blurred = soft.WriteToMemory<float>();
        for (var i = 0; i < bytes.Length; i++) bytes[i] = (byte)Math.Clamp(Math.Round(blurred[i] + (Grain * Scatter.Normal(Seed, i % Width, i / Width))), 0, 255);
        if (Jpeg is { } quality)
        {
            using var plain = Image.NewFromMemory(bytes, Width, Height, 1, Enums.BandFormat.Uchar);
            using var packed = Image.NewFromBuffer(plain.JpegsaveBuffer(q: quality));
            bytes = packed.WriteToMemory<byte>();
        }

        return new(Width, Height, [.. bytes.Select(value => (float)value)], 1);
    }
}
