namespace Lidoff.Reckoning.Converters;

/// <summary>Loss terms of a synchronous step-down converter, in the order of the inputs of <see cref="BuckLossCalculation"/>.</summary>
internal static class BuckLosses
{
    /// <summary>Watts.</summary>
    public static T Total<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T>
    {
        T input = x[0], output = x[1], load = x[2], inductance = x[3], frequency = x[4];
        var duty = output / input;
        var ripple = (input - output) * duty / (frequency * inductance);
        var squared = load * load + ripple * ripple / 12;
        var conduction = squared * (x[5] * duty + x[6] * (1 - duty) + x[7]);
        var switching = 0.5 * load * (input * x[8] + x[11] * x[9]) * frequency;
        var deadTime = x[11] * load * x[10] * frequency;
        var recovery = 0.5 * input * x[12] * x[13] * frequency;
        var switchCharge = 0.5 * x[14] * input * input * frequency;
        var gates = x[15] * x[16] * frequency;
        var chip = input * x[17];
        var inputCapacitor = load * load * (input - output) * output / (input * input) * x[18];
        var outputCapacitor = ripple * ripple / 12 * x[19];
        return conduction + switching + deadTime + recovery + switchCharge + gates + chip + inputCapacitor + outputCapacitor;
    }
}
