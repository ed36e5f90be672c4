using Lidoff.Numbers;
using Lidoff.Numbers.Typed.Codes.Bands;

namespace Lidoff.Seeing.Reading.Bands;

/// <summary>
/// What each band looks like in every light that is believed in: the body's own colour tells the light, as far as bodies are known (beige, light blue,
/// green, white, brown, dark blue), and the light what colours the bands have. Colours, bodies and lights with their spreads are judgements of ours, near
/// the nominal colours of EIA-359 where that has them; no pigment was measured.
/// </summary>
internal static class BandLights
{
    // L*, a*, b* under D65 and the standard deviation of each, in the order of the colours.
    private static readonly (double L, double A, double B, double U)[] Colours =
    [
        (18, 0, 0, 8), (32, 18, 20, 8), (42, 54, 32, 9), (61, 46, 56, 9), (82, 4, 72, 9), (45, -36, 18, 10), (38, 4, -42, 11), (37, 32, -32, 10), (52, 0, 0, 7), (91, 0, 3, 6),
        (61, 6, 36, 9), (75, 0, 1, 7), (70, 32, 8, 9),
    ];

    private static readonly (double L, double A, double B, double U, double Share)[] Bodies =
    [
        (78, 4, 20, 8, 0.45), (68, -10, -18, 9, 0.3), (60, -20, 8, 11, 0.08), (84, 0, 4, 6, 0.05), (55, 15, 20, 9, 0.07), (36, 0, -25, 9, 0.05),
    ];

    // Logs of what the light does to the channels: warm or cold, green or magenta, bright or dark. A camera takes out most of the colour by itself.
    private static readonly double[] Warmths = [-0.45, -0.3, -0.15, 0, 0.15, 0.3, 0.45];
    private static readonly double[] Tints = [-0.1, 0, 0.1];
    private static readonly double[] Exposures = [-0.9, -0.6, -0.3, 0, 0.3, 0.6];
    private const double WarmthU = 0.2;
    private const double TintU = 0.06;
    private const double ExposureU = 0.45;

    // A band may be nearer to a lamp, further from the camera's white or mixed with the body's colour: half as much again as its pigment.
    private const double Seen = 5;

    // Lights less likely than that beside the likeliest are let go.
    private const double Negligible = 1e-3;

    /// <summary>The lights, each with what the bands look like in it and how likely it is.</summary>
    public static IReadOnlyList<(IReadOnlyList<BandShares> Bands, double Weight)> Of(BandProfile profile)
    {
        var lights = new List<(double R, double G, double B, double Weight)>();
        foreach (var warm in Warmths)
        {
            foreach (var tint in Tints)
            {
                foreach (var exposure in Exposures)
                {
                    var (r, g, b) = (Elementary.Exp(-exposure - warm + (tint / 2)), Elementary.Exp(-exposure - tint), Elementary.Exp(-exposure + warm + (tint / 2)));
                    var lab = profile.Ground.Times(r, g, b).Lab();
                    var body = Bodies.Sum(each => each.Share * Density(lab, each.L, each.A, each.B, Math.Sqrt((each.U * each.U) + (Seen * Seen))));
                    lights.Add((r, g, b, body * Normal(warm / WarmthU) * Normal(tint / TintU) * Normal(exposure / ExposureU)));
                }
            }
        }

        var most = lights.Max(light => light.Weight);
        return
        [
            .. lights.Where(light => light.Weight > Negligible * most)
                .Select(light => ((IReadOnlyList<BandShares>)[.. profile.Bands.Select(band => Shares(band.Colour.Times(light.R, light.G, light.B)))], light.Weight / most)),
        ];
    }

    /// <summary>What one band looks like over all lights.</summary>
    public static BandShares Together(IReadOnlyList<(IReadOnlyList<BandShares> Bands, double Weight)> lights, int band)
    {
        var sums = BandTable.All.Select(colour => lights.Sum(light => light.Weight * light.Bands[band][colour])).ToList();
        var all = Math.Max(1e-300, sums.Sum());
        return new([.. sums.Select(sum => sum / all)]);
    }

    private static BandShares Shares(LinearRgb colour)
    {
        var lab = colour.Lab();
        return new([.. Colours.Select(each => Density(lab, each.L, each.A, each.B, Math.Sqrt((each.U * each.U) + (Seen * Seen))))]);
    }

    // Times a thousand, so that products of six stay numbers.
    private static double Density((double L, double A, double B) lab, double l, double a, double b, double u) =>
        1000 / (u * u * u) * Normal(Math.Sqrt(((lab.L - l) * (lab.L - l)) + ((lab.A - a) * (lab.A - a)) + ((lab.B - b) * (lab.B - b))) / u);

    private static double Normal(double z) => Elementary.Exp(-0.5 * Math.Min(z * z, 400));
}
