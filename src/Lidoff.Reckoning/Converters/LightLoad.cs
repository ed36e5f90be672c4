namespace Lidoff.Reckoning.Converters;

/// <summary>What a pulse-skipping converter takes.</summary>
internal static class LightLoad
{
    /// <summary>What every calculation over this model takes.</summary>
    public static readonly IReadOnlyList<CalculationInput> Inputs =
    [
        Given.Of("battery_voltage", Units.Volt, 0.5, 100, "voltage before the converter"),
        Given.Of("load_voltage", Units.Volt, 0.3, 100, "voltage after it"),
        Given.Of("load_current", Units.Microampere, 0.001, 10000000.0, "current of the load"),
        Given.Of("quiescent_current", Units.Nanoampere, 0, 1000000.0, "what the converter takes while it idles", 500),
        Given.Of("resistance", Units.Ohm, 0, 100, "switches and winding, as one", 0.3),
        Given.Of("switching_loss", Units.Percent, 0, 50, "share of the power given that switching costs", 6),
    ];

    /// <summary>Watts from the battery, from values in the order of <see cref="Inputs"/>.</summary>
    public static T PowerTaken<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T>
    {
        T battery = x[0], output = x[1], load = x[2], idle = x[3], resistance = x[4], switching = x[5];
        return output * load * (1 + switching) + battery * idle + load * load * resistance;
    }
}
