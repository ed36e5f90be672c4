namespace Lidoff.Reckoning.Lines;

/// <summary>
/// Hammerstad and Jensen 1980: a trace above a plane. Inputs of all three calculations: width, height, permittivity,
/// thickness.
/// </summary>
internal static class Microstrip
{
    // Below this share of the height the copper counts as having no thickness; zero itself has no logarithm.
    private const double LeastThickness = 1e-9;

    /// <summary>Ohms.</summary>
    public static T Impedance<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T>
    {
        var (_, filled) = Widths(x);
        return InAir(filled) / T.Sqrt(ThinPermittivity(filled, x[2]));
    }

    /// <summary>The effective relative permittivity.</summary>
    public static T Permittivity<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T>
    {
        var (air, filled) = Widths(x);
        var ratio = InAir(air) / InAir(filled);
        return ThinPermittivity(filled, x[2]) * ratio * ratio;
    }

    // Thick copper acts as a wider trace; the less so, the more the field is in the dielectric.
    private static (T Air, T Filled) Widths<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T>
    {
        var wide = x[0] / x[1];
        var thick = T.Max(x[3] / x[1], LeastThickness);
        var root = T.Exp(-2 * T.Sqrt(6.517 * wide));
        var tanh = (1 - root) / (1 + root);
        var air = thick / Math.PI * T.Log(1 + 4 * Math.E * tanh * tanh / thick);
        var depth = T.Sqrt(T.Max(x[2] - 1, 1e-12));
        var inverseCosh = 2 / (T.Exp(depth) + T.Exp(-depth));
        return (wide + air, wide + air * (1 + inverseCosh) * 0.5);
    }

    private static T InAir<T>(T u)
        where T : struct, IReal<T>
    {
        var f = 6 + (2 * Math.PI - 6) * T.Exp(-T.Pow(30.666 / u, 0.7528));
        return Nature.VacuumImpedance / (2 * Math.PI) * T.Log(f / u + T.Sqrt(1 + 4 / (u * u)));
    }

    private static T ThinPermittivity<T>(T u, T permittivity)
        where T : struct, IReal<T>
    {
        var squared = u * u;
        var fourth = squared * squared;
        var ratio = u / 18.1;
        var a = 1 + T.Log((fourth + squared / (52 * 52)) / (fourth + 0.432)) / 49 + T.Log(1 + ratio * ratio * ratio) / 18.7;
        var b = 0.564 * T.Pow((permittivity - 0.9) / (permittivity + 3), 0.053);
        return (permittivity + 1) * 0.5 + (permittivity - 1) * 0.5 * T.Pow(1 + 10 / u, -(a * b));
    }
}
