namespace Lidoff.Reckoning.Converters;

/// <summary>The efficiency of a synchronous step-down converter from its parts.</summary>
public sealed class BuckEfficiencyCalculation : Calculation<BuckEfficiencyCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "buck_efficiency",
        "The efficiency of a synchronous step-down converter from its parts.",
        Units.Percent,
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
        ],
        "Converter efficiency application note of a power-chip maker: loss terms of a synchronous step-down converter " +
            "in continuous conduction",
        Maturity.Checked,
        [
            "Continuous conduction only: at light load converters skip pulses and lose less.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T>
    {
        T given = x[1] * x[2];
        return given / (given + BuckLosses.Total(x));
    }
}
