namespace Lidoff.Reckoning.Conductors;

/// <summary>The fit of IPC-2221 to its charts: I = k dT^0.44 A^0.725, amperes, kelvin, square mils.</summary>
internal static class Ipc2221
{
    private const double Mil = 25.4e-6;

    /// <summary>Metres of width; <paramref name="k"/> is 0.048 on outer, 0.024 on inner layers.</summary>
    public static T Width<T>(T current, T rise, T thickness, double k)
        where T : struct, IReal<T>
    {
        var squareMils = T.Pow(current / (k * T.Pow(rise, 0.44)), 1 / 0.725);
        return squareMils * (Mil * Mil) / thickness;
    }
}
