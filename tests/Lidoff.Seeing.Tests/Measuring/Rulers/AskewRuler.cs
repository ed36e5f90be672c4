using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring.Edges;
using Lidoff.Seeing.Rendering;

namespace Lidoff.Seeing.Tests.Measuring.Rulers;

/// <summary>
/// A ruler lying askew on a bench, photographed at a slant: a pinhole with a full rotation, light that falls off across the picture, blur, grain, numerals; where every mm of it shows is known.
/// Ruled as rulers are (millimetres, half millimetres, an inch in sixteenths), or as a comb whose teeth are all alike.
/// </summary>
internal sealed class AskewRuler
{
    public const int Width = 1400, Height = 1050;

    private const int Samples = 2;
    private const int Reach = 3;

    private static readonly (double Tick, int[] Longer, int Lines)[] Rulings = [(1, [5, 10], 101), (0.5, [2, 10, 20], 121), (1.5875, [2, 4, 8, 16], 81)];

    private readonly double[,] turn;
    private readonly double focal, distance, cx, cy, spin, light, lightTurn, grain, blur, lineMm, shortMm;
    private readonly int[] longer;
    private readonly int seed;
    private readonly bool steel;

    public AskewRuler(int seed, double slantDegrees, bool comb = false)
    {
        this.seed = seed;
        var random = new Random(seed);
        (Tick, longer, Lines) = Rulings[seed % 3];
        if (comb) longer = [];
        var period = Tick == 0.5 ? 7 + (3 * random.NextDouble()) : 8 + (4 * random.NextDouble());
        spin = 2 * Math.PI * random.NextDouble();
        var az = 2 * Math.PI * random.NextDouble();
        var far = 1 + (1.5 * random.NextDouble());
        focal = far * Width;
        var pxPerMm = period / Tick;
        distance = focal / pxPerMm;
        var (s, c) = Math.SinCos(slantDegrees * Math.PI / 180);
        var (sa, ca) = Math.SinCos(az);
        // Rodrigues about the axis (ca, sa, 0).
        turn = new[,]
        {
            { (ca * ca * (1 - c)) + c, ca * sa * (1 - c), sa * s },
            { ca * sa * (1 - c), (sa * sa * (1 - c)) + c, -ca * s },
            { -sa * s, ca * s, c },
        };
        (cx, cy) = ((random.NextDouble() - 0.5) * 0.15 * Width / pxPerMm, (random.NextDouble() - 0.5) * 0.15 * Width / pxPerMm);
        (light, lightTurn, grain, blur) = (0.5 * random.NextDouble(), 2 * Math.PI * random.NextDouble(), 2 + (3 * random.NextDouble()), 0.6 + (0.5 * random.NextDouble()));
        steel = random.Next(3) == 0;
        (lineMm, shortMm) = (Tick * (0.14 + (0.1 * random.NextDouble())), Tick * (2.5 + random.NextDouble()));
    }

    /// <summary>From line to line, mm.</summary>
    public double Tick { get; }

    public int Lines { get; }

    /// <summary>Where a place along the ruler (mm from its first line) and across it shows.</summary>
    public PicturePoint Show(double along, double across)
    {
        var (sp, cp) = Math.SinCos(spin);
        var a = along - ((Lines - 1) * Tick / 2);
        var (x, y) = (cx + (a * cp) - (across * sp), cy + (a * sp) + (across * cp));
        var (u, v, w) = ((turn[0, 0] * x) + (turn[0, 1] * y), (turn[1, 0] * x) + (turn[1, 1] * y), distance + (turn[2, 0] * x) + (turn[2, 1] * y));
        return new((Width / 2.0) + (focal * u / w), (Height / 2.0) + (focal * v / w));
    }

    /// <summary>Where on the ruler a place of the picture lies.</summary>
    public (double Along, double Across) At(double px, double py)
    {
        var (dx, dy) = ((px - (Width / 2.0)) / focal, (py - (Height / 2.0)) / focal);
        // The board's normal is the third column; a ray meets it at t.
        var (n0, n1, n2) = (turn[0, 2], turn[1, 2], turn[2, 2]);
        var t = n2 * distance / ((n0 * dx) + (n1 * dy) + n2);
        var (p0, p1, p2) = (t * dx, t * dy, t - distance);
        var (x, y) = ((p0 * turn[0, 0]) + (p1 * turn[1, 0]) + (p2 * turn[2, 0]), (p0 * turn[0, 1]) + (p1 * turn[1, 1]) + (p2 * turn[2, 1]));
        var (sp, cp) = Math.SinCos(spin);
        var (ex, ey) = (x - cx, y - cy);
        return ((ex * cp) + (ey * sp) + ((Lines - 1) * Tick / 2), (ey * cp) - (ex * sp));
    }

    private double Value(double px, double py)
    {
        var (along, across) = At(px, py);
        var last = (Lines - 1) * Tick;
        var value = 105 + (25 * Math.Sin(px / 37) * Math.Cos(py / 53)) + (12 * Math.Sin((px + (2 * py)) / 19));
        if (across > -0.4 * Tick && across < 14 * Tick && along > -4 * Tick && along < last + (4 * Tick))
        {
            var number = (int)Math.Round(along / Tick);
            var off = Math.Abs(along - (number * Tick));
            var length = shortMm + (1.7 * Tick * longer.Count(every => number % every == 0));
            var ink = number >= 0 && number < Lines && across >= 0 && across < length && off < lineMm / 2;
            var numeral = longer.Length > 0 && number >= 0 && number < Lines && longer.All(every => number % every == 0) && across > length + (0.6 * Tick) && across < length + (2.6 * Tick) && off < Tick && Math.Abs(Math.Sin(5.7 * along / Tick) + Math.Cos(4.9 * across / Tick)) > 0.7;
            value = steel ? (ink || numeral ? 60 : 165 + (14 * Math.Sin(across * 9 / Tick))) : ink || numeral ? 45 : 222;
        }

        var shade = 1 + (light * (((px - (Width / 2.0)) * Math.Cos(lightTurn)) + ((py - (Height / 2.0)) * Math.Sin(lightTurn))) / Width);
        return value * shade;
    }

    public GreyPicture Picture()
    {
        var values = new double[Width * Height];
        Parallel.For(0, Height, y =>
        {
            for (var x = 0; x < Width; x++)
            {
                var sum = 0.0;
                for (var k = 0; k < Samples * Samples; k++) sum += Value(x + (((k % Samples) + 0.5) / Samples), y + (((k / Samples) + 0.5) / Samples));
                values[(y * Width) + x] = sum / (Samples * Samples);
            }
        });
        // Gaussian blur, apart in rows and columns.
        var kernel = Enumerable.Range(-Reach, (2 * Reach) + 1).Select(i => Math.Exp(-0.5 * i * i / (blur * blur))).ToArray();
        var total = kernel.Sum();
        foreach (var (sx, sy) in new[] { (1, 0), (0, 1) })
        {
            var next = new double[values.Length];
            Parallel.For(0, Height, y =>
            {
                for (var x = 0; x < Width; x++)
                {
                    var sum = 0.0;
                    for (var k = -Reach; k <= Reach; k++) sum += kernel[k + Reach] * values[(Math.Clamp(y + (k * sy), 0, Height - 1) * Width) + Math.Clamp(x + (k * sx), 0, Width - 1)];
                    next[(y * Width) + x] = sum / total;
                }
            });
            values = next;
        }

        return new(Width, Height, [.. values.Select((value, i) => (float)Math.Clamp(value + (grain * Scatter.Normal(seed, i % Width, i / Width)), 0, 255))], 1);
    }
}
