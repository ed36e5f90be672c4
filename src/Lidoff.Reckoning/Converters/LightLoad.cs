namespace Lidoff.Reckoning.Converters;

/// <summary>What a pulse-skipping converter takes, in the order of the inputs of <see cref="BatteryDrawCalculation"/>.</summary>
internal static class LightLoad
{
    /// <summary>Watts from the battery.</summary>
    public static T PowerTaken<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T>
    {
        T battery = x[0], output = x[1], load = x[2], idle = x[3], resistance = x[4], switching = x[5];
        return output * load * (1 + switching) + battery * idle + load * load * resistance;
    }
}
