namespace Lidoff.Reckoning.Conductors;

/// <summary>The resistivity of annealed copper.</summary>
internal static class Copper
{
    // IEC 60028, 100 % IACS at 20 degrees Celsius; temperature coefficient as in wire tables.
    private const double AtTwenty = 1.7241e-8;
    private const double PerKelvin = 0.00393;
    private const double Twenty = 293.15;

    /// <summary>Ohm metres at a temperature in kelvin.</summary>
    public static T Resistivity<T>(T kelvin)
        where T : struct, IReal<T> => AtTwenty * (1 + PerKelvin * (kelvin - Twenty));
}
