namespace Lidoff.Reckoning;

/// <summary>Units that only calculations need. Factors are exact by definition unless a source is named.</summary>
internal static class ReckonUnits
{
    private static readonly Dimension Length = new(Length: 1);
    private static readonly Dimension Time = new(Time: 1);
    private static readonly Dimension Rate = new(Time: -1);
    private static readonly Dimension Energy = Units.WattHour.Dimension;
    private static readonly Dimension Volume = new(Length: 3);

    public static readonly Unit Metre = new("m", Length, 1);
    public static readonly Unit Micrometre = new("µm", Length, 1e-6);
    public static readonly Unit SquareMillimetre = new("mm²", Length * Length, 1e-6);
    public static readonly Unit Millisecond = new("ms", Time, 1e-3);
    public static readonly Unit Hertz = new("Hz", Rate, 1);
    public static readonly Unit Megahertz = new("MHz", Rate, 1e6);
    public static readonly Unit Nanoampere = new("nA", Units.Ampere.Dimension, 1e-9);
    public static readonly Unit Milliohm = new("mΩ", Units.Ohm.Dimension, 1e-3);
    public static readonly Unit Microfarad = new("µF", Units.Picofarad.Dimension, 1e-6);
    public static readonly Unit Microhenry = new("µH", Units.Ohm.Dimension * Time, 1e-6);
    public static readonly Unit Milliwatt = new("mW", Energy / Time, 1e-3);
    public static readonly Unit Kelvin = new("K", new(Temperature: 1), 1);
    public static readonly Unit Celsius = new("°C", new(Temperature: 1), 1, 273.15);
    public static readonly Unit Milligram = new("mg", new(Mass: 1), 1e-6);
    public static readonly Unit StandardGravity = new("gn", new(Length: 1, Time: -2), 9.80665);
    public static readonly Unit MetrePerSecond = new("m/s", new(Length: 1, Time: -1), 1);

    /// <summary>Events an hour.</summary>
    public static readonly Unit PerHour = new("1/h", Rate, 1 / 3600.0);

    /// <summary>Per cent a month, the month a twelfth of 365.25 days.</summary>
    public static readonly Unit PercentPerMonth = new("%/month", Rate, 0.01 / (365.25 / 12 * 86400));

    public static readonly Unit Microcoulomb = new("µC", Units.MilliampereHour.Dimension, 1e-6);
    public static readonly Unit Nanocoulomb = new("nC", Units.MilliampereHour.Dimension, 1e-9);
    public static readonly Unit Millijoule = new("mJ", Energy, 1e-3);
    public static readonly Unit WattHourPerLitre = new("Wh/L", Energy / Volume, 3600e3);
    public static readonly Unit Kilovolt = new("kV", Units.Volt.Dimension, 1e3);
    public static readonly Unit VoltPerMillimetre = new("V/mm", Units.Volt.Dimension / Length, 1e3);
    public static readonly Unit PicosecondPerMillimetre = new("ps/mm", Time / Length, 1e-9);
    public static readonly Unit PicofaradPerMillimetre = new("pF/mm", Units.Picofarad.Dimension / Length, 1e-9);
    public static readonly Unit KilogramPerCubicMetre = new("kg/m³", new Dimension(Mass: 1) / Volume, 1);
    public static readonly Unit MillipascalSecond = new("mPa·s", Energy / Volume * Time, 1e-3);
    public static readonly Unit MicroPerKelvin = new("ppm/K", new(Temperature: -1), 1e-6);
    public static readonly Unit PerSquareCentimetre = new("1/cm²", new(Length: -2), 1e4);
    public static readonly Unit MilligramPerWattHour = new("mg/Wh", new Dimension(Mass: 1) / Energy, 1e-6 / 3600);

    /// <summary>A thousandth of standard gravity.</summary>
    public static readonly Unit MilliGravity = new("mgn", new(Length: 1, Time: -2), 9.80665e-3);

    /// <summary>Noise density. The half power of time has no dimension here, so the acceleration stands alone.</summary>
    public static readonly Unit MicroGravityPerRootHertz = new("µgn/√Hz", new(Length: 1, Time: -2), 9.80665e-6);

    /// <summary>A level; ten decibels are a factor of ten in power.</summary>
    public static readonly Unit Decibel = new("dB", Dimension.None, 1);
}
