using Lidoff.Numbers.Typed.Codes;
using Lidoff.Numbers.Typed.Codes.Bands;
using Lidoff.Seeing.Reading.Bands;
using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Rendering;

namespace Lidoff.Seeing.Tests.Reading.Bands;

/// <summary>
/// Axial parts drawn with known truth: a body with thicker ends, leads, bands of scattered pigments, a highlight along it, warm or cold light that the
/// camera half takes out, light that falls off, blur, grain, any turn, over a board of some colour. Pigments are sRGB steps as they look on photographs
/// of such parts (from memory), scattered anew for each band; the reader's colours are others.
/// </summary>
internal sealed class RenderedAxial
{
    private static readonly (double R, double G, double B)[] Pigments =
    [
        (30, 28, 28), (98, 54, 30), (188, 34, 38), (232, 108, 30), (238, 205, 48), (30, 122, 62), (34, 74, 158), (108, 60, 136), (124, 126, 128), (236, 234, 228), (178, 140, 66), (188, 188, 190), (226, 142, 152),
    ];

    private static readonly (double R, double G, double B)[] Bodies = [(214, 186, 140), (208, 180, 136), (150, 186, 206), (140, 178, 198), (122, 158, 130), (214, 208, 196)];

    private readonly int seed;
    private int drawn;

    public RenderedAxial(int seed, bool hard = true)
    {
        this.seed = seed;
        // Four bands of E24 with gold, or five of E96 with brown: in half of the cases each; every tenth has six.
        var layout = Uniform();
        IReadOnlyList<int> series = layout < 0.5 ? ESeries.Figures(24) : ESeries.Figures(96);
        var figures = series[(int)(Uniform() * series.Count)];
        var exponent = (int)(Uniform() * 6) - (layout < 0.5 ? 0 : 1);
        var digits = layout < 0.5 ? new[] { figures / 10, figures % 10 } : [figures / 100, figures / 10 % 10, figures % 10];
        List<BandColour> colours = [.. digits.Select(digit => (BandColour)digit), exponent < 0 ? BandColour.Gold : (BandColour)exponent];
        colours.Add(layout < 0.5 ? (Uniform() < 0.9 ? BandColour.Gold : BandColour.Silver) : (Uniform() < 0.85 ? BandColour.Brown : BandColour.Red));
        if (layout > 0.92) colours.Add(Uniform() < 0.5 ? BandColour.Brown : BandColour.Red);
        Colours = colours;
        var value = (double)figures;
        for (var i = 0; i < exponent; i++) value *= 10;
        Ohms = exponent < 0 ? figures / 10.0 : value;
        Draw(hard);
    }

    public IReadOnlyList<BandColour> Colours { get; }

    public double Ohms { get; }

    public ColourPyramid Picture { get; private set; } = null!;

    public byte[] Pixels { get; private set; } = [];

    public PictureRegion Box { get; private set; }

    public PictureRegion Body { get; private set; }

    public const int Width = 260;

    public const int Height = 200;

    private double Uniform() => Scatter.Even(seed, ++drawn, 7);

    private double Normal() => Scatter.Normal(seed, ++drawn, 11);

    private (double R, double G, double B) Ink((double R, double G, double B) steps, double each, double all)
    {
        var bright = Math.Exp(all * Normal());
        double Of(double step) => LinearRgb.OfStep((byte)step) * bright * Math.Exp(each * Normal());
        return (Of(steps.R), Of(steps.G), Of(steps.B));
    }

    private void Draw(bool hard)
    {
        var body = Ink(Bodies[(int)(Uniform() * Bodies.Length)], 0.06, 0.12);
        var inks = Colours.Select(colour => Ink(Pigments[(int)colour], hard ? 0.18 : 0.03, hard ? 0.22 : 0.05)).ToList();
        (double R, double G, double B)[] grounds = [(30, 90, 50), (30, 60, 120), (235, 235, 232), (25, 25, 28), (180, 160, 130)];
        var ground = Ink(grounds[(int)(Uniform() * grounds.Length)], 0.08, 0.15);
        var length = hard ? 110 + (90 * Uniform()) : 170;
        var thick = length * (0.3 + (0.12 * Uniform()));
        var turn = hard ? Math.PI * ((2 * Uniform()) - 1) : 0.1;
        var (mx, my) = ((Width / 2.0) + (6 * Normal()), (Height / 2.0) + (4 * Normal()));
        Body = new(new(mx, my), length, thick, turn);
        Box = PictureRegion.Box(0, 0, Width, Height);
        // Bands: the first near its end, a wider gap before the last in three of five.
        var n = Colours.Count;
        var band = n == 4 ? 0.075 : 0.06;
        var wide = Uniform() < 0.6 ? 1.5 + (0.4 * Uniform()) : 1;
        var left = 0.1 + (0.04 * Uniform());
        var step = (1 - left - 0.12 - band) / (n - 2 + wide);
        var starts = Enumerable.Range(0, n).Select(i => left + (i < n - 1 ? i * step : ((n - 2) * step) + (wide * step))).ToList();
        var forward = Uniform() < 0.5;
        // Light: a black body between 2,800 and 9,000 K that the camera takes out by 60 to 100 %, roughly exp(k·mired) in red and blue; a lean to green.
        var mired = (1e6 / (2800 + (6200 * Uniform()))) - 153.8;
        var cast = hard ? mired * 0.0022 * (0.7 * Uniform()) : 0;
        var lean = hard ? 0.06 * Normal() : 0;
        var (gr, gg, gb) = (Math.Exp(cast), Math.Exp(lean), Math.Exp(-cast * 1.3));
        var exposure = hard ? Math.Exp(0.25 * Normal()) : 1;
        var (fallX, fallY) = hard ? (0.35 * ((2 * Uniform()) - 1), 0.35 * ((2 * Uniform()) - 1)) : (0, 0);
        var shine = 0.25 * ((2 * Uniform()) - 1);
        var gloss = hard ? 0.3 * Uniform() : 0.1;
        var linear = new double[Width * Height * 3];
        for (var y = 0; y < Height; y++)
        {
            for (var x = 0; x < Width; x++)
            {
                double r = 0, g = 0, b = 0;
                // Four places a pixel, so that edges are soft.
                for (var s = 0; s < 4; s++)
                {
                    var (u, v) = Body.Inside(new(x + 0.25 + (0.5 * (s % 2)), y + 0.25 + (0.5 * (s / 2))));
                    var along = (u / length) + 0.5;
                    // Thicker towards both ends, round at them.
                    var half = along is < 0 or > 1 ? 0 : (thick / 2) * ((along < 0.22 || along > 0.78) ? Math.Sqrt(Math.Min(1, Math.Min(along, 1 - along) / 0.05)) : 0.86);
                    var (ir, ig, ib) = ground;
                    var light = 1.0;
                    if (half > 0 && Math.Abs(v) < half)
                    {
                        var at = forward ? along : 1 - along;
                        var k = starts.FindIndex(start => at >= start && at < start + band);
                        (ir, ig, ib) = k >= 0 ? inks[k] : body;
                        var across = v / half;
                        light = 0.35 + (0.65 * Math.Sqrt(1 - (across * across)));
                        var spot = Math.Exp(-0.5 * (across - shine) * (across - shine) / 0.0049) * gloss;
                        (ir, ig, ib) = ((ir * light) + spot, (ig * light) + spot, (ib * light) + spot);
                        light = 1;
                    }
                    else if (Math.Abs(v) < 0.06 * thick && Math.Abs(u) < length)
                    {
                        (ir, ig, ib) = (0.45, 0.45, 0.47);
                    }

                    r += ir / 4;
                    g += ig / 4;
                    b += ib / 4;
                }

                var fall = exposure * (1 + (fallX * ((x / (double)Width) - 0.5)) + (fallY * ((y / (double)Height) - 0.5)));
                var i = ((y * Width) + x) * 3;
                (linear[i], linear[i + 1], linear[i + 2]) = (r * fall * gr, g * fall * gg, b * fall * gb);
            }
        }

        Blur(linear, hard ? 0.5 + (1.3 * Uniform()) : 0.7);
        var grain = hard ? 1 + (4 * Uniform()) : 1;
        Pixels = new byte[linear.Length];
        for (var i = 0; i < linear.Length; i++)
        {
            var v = Math.Clamp(linear[i], 0, 1);
            var encoded = 255 * (v <= 0.0031308 ? 12.92 * v : (1.055 * Math.Pow(v, 1 / 2.4)) - 0.055);
            Pixels[i] = (byte)Math.Clamp(encoded + (grain * Scatter.Normal(seed + 1000003, i % 1999, i / 1999)) + 0.5, 0, 255);
        }

        Picture = new(Pixels, 3, Width, Height);
    }

    private static void Blur(double[] values, double sigma)
    {
        var reach = (int)Math.Ceiling(3 * sigma);
        var kernel = Enumerable.Range(-reach, (2 * reach) + 1).Select(k => Math.Exp(-0.5 * k * k / (sigma * sigma))).ToArray();
        var sum = kernel.Sum();
        foreach (var down in (bool[])[false, true])
        {
            var source = (double[])values.Clone();
            for (var y = 0; y < Height; y++)
            {
                for (var x = 0; x < Width; x++)
                {
                    for (var c = 0; c < 3; c++)
                    {
                        var total = 0.0;
                        for (var k = -reach; k <= reach; k++)
                        {
                            var (sx, sy) = down ? (x, Math.Clamp(y + k, 0, Height - 1)) : (Math.Clamp(x + k, 0, Width - 1), y);
                            total += kernel[k + reach] * source[(((sy * Width) + sx) * 3) + c];
                        }

                        values[(((y * Width) + x) * 3) + c] = total / sum;
                    }
                }
            }
        }
    }
}
