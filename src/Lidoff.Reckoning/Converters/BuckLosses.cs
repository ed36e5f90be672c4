namespace Lidoff.Reckoning.Converters;

/// <summary>Loss terms of a synchronous step-down converter.</summary>
internal static class BuckLosses
{
    /// <summary>What every calculation over these losses takes.</summary>
    public static readonly IReadOnlyList<CalculationInput> Inputs =
    [
        Given.Of("input_voltage", Units.Volt, 0.5, 100, "voltage before the converter"),
        Given.Of("output_voltage", Units.Volt, 0.3, 100, "voltage after it"),
        Given.Of("load_current", Units.Ampere, 0.0001, 100, "current of the load"),
        Given.Of("inductance", Units.Microhenry, 0.01, 100000.0, "inductance at that current"),
        Given.Of("frequency", Units.Megahertz, 0.001, 100, "switching frequency"),
        Given.Of("high_resistance", Units.Milliohm, 0, 100000.0, "on-resistance of the upper switch"),
        Given.Of("low_resistance", Units.Milliohm, 0, 100000.0, "on-resistance of the lower switch"),
        Given.Of("coil_resistance", Units.Milliohm, 0, 100000.0, "winding resistance of the inductor"),
        Given.Of("high_switching", Units.Nanosecond, 0, 10000.0, "rise and fall time of the upper switch, added", 0),
        Given.Of("low_switching", Units.Nanosecond, 0, 10000.0, "rise and fall time of the lower switch, added", 0),
        Given.Of("dead_time", Units.Nanosecond, 0, 10000.0, "both dead times of a period, added", 0),
        Given.Of("diode_voltage", Units.Volt, 0, 2, "forward voltage of the lower switch's body diode", 0.5),
        Given.Of("recovery_current", Units.Ampere, 0, 100, "reverse recovery current of that diode", 0),
        Given.Of("recovery_time", Units.Nanosecond, 0, 10000.0, "its recovery time", 0),
        Given.Of("switch_capacitance", Units.Picofarad, 0, 1000000.0, "output capacitance of both switches, added", 0),
        Given.Of("gate_charge", ReckonUnits.Nanocoulomb, 0, 10000.0, "gate charge of both switches, added", 0),
        Given.Of("gate_voltage", Units.Volt, 0, 20, "voltage that drives the gates", 5),
        Given.Of("chip_current", Units.Milliampere, 0, 10000.0, "what the controller itself takes", 0),
        Given.Of("input_capacitor", Units.Milliohm, 0, 100000.0, "series resistance of the input capacitor", 0),
        Given.Of("output_capacitor", Units.Milliohm, 0, 100000.0, "series resistance of the output capacitor", 0),
    ];

    /// <summary>Watts, from values in the order of <see cref="Inputs"/>.</summary>
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
