namespace Lidoff.Numbers.Quantities;

/// <summary>The units the trade uses. Factors are exact by definition of the SI unless a source is named beside them.</summary>
public static class Units
{
    private static readonly Dimension LengthD = new(Length: 1);
    private static readonly Dimension TimeD = new(Time: 1);
    private static readonly Dimension CurrentD = new(Current: 1);
    private static readonly Dimension VoltageD = new(Length: 2, Mass: 1, Time: -3, Current: -1);
    private static readonly Dimension ResistanceD = new(Length: 2, Mass: 1, Time: -3, Current: -2);
    private static readonly Dimension CapacitanceD = new(Length: -2, Mass: -1, Time: 4, Current: 2);
    private static readonly Dimension ChargeD = new(Time: 1, Current: 1);
    private static readonly Dimension EnergyD = new(Length: 2, Mass: 1, Time: -2);

    /// <summary>A pure number.</summary>
    public static readonly Unit One = new("1", Dimension.None, 1);

    /// <summary>Per cent.</summary>
    public static readonly Unit Percent = new("%", Dimension.None, 0.01);

    /// <summary>Metre.</summary>
    public static readonly Unit Metre = new("m", LengthD, 1);

    /// <summary>Millimetre.</summary>
    public static readonly Unit Millimetre = new("mm", LengthD, 1e-3);

    /// <summary>Second.</summary>
    public static readonly Unit Second = new("s", TimeD, 1);

    /// <summary>Nanosecond.</summary>
    public static readonly Unit Nanosecond = new("ns", TimeD, 1e-9);

    /// <summary>Hour.</summary>
    public static readonly Unit Hour = new("h", TimeD, 3600);

    /// <summary>Volt.</summary>
    public static readonly Unit Volt = new("V", VoltageD, 1);

    /// <summary>Ampere.</summary>
    public static readonly Unit Ampere = new("A", CurrentD, 1);

    /// <summary>Milliampere.</summary>
    public static readonly Unit Milliampere = new("mA", CurrentD, 1e-3);

    /// <summary>Microampere.</summary>
    public static readonly Unit Microampere = new("µA", CurrentD, 1e-6);

    /// <summary>Ohm.</summary>
    public static readonly Unit Ohm = new("Ω", ResistanceD, 1);

    /// <summary>Picofarad.</summary>
    public static readonly Unit Picofarad = new("pF", CapacitanceD, 1e-12);

    /// <summary>Milliampere-hour.</summary>
    public static readonly Unit MilliampereHour = new("mAh", ChargeD, 3.6);

    /// <summary>Watt-hour.</summary>
    public static readonly Unit WattHour = new("Wh", EnergyD, 3600);
}
