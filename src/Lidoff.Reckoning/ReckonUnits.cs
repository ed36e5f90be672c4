using D = Lidoff.Numbers.Quantities.Dimensions;

namespace Lidoff.Reckoning;

/// <summary>Units that only calculations need. Factors are exact by definition unless a source is named.</summary>
internal static class ReckonUnits
{
    /// <summary>Events an hour.</summary>
    public static readonly Unit PerHour = new("1/h", D.Frequency, 1 / 3600.0);

    /// <summary>Per cent a month, the month a twelfth of 365.25 days.</summary>
    public static readonly Unit PercentPerMonth = new("%/month", D.Frequency, 0.01 / (365.25 / 12 * 86400));

    public static readonly Unit Microcoulomb = new("µC", D.Charge, 1e-6);
    public static readonly Unit Nanocoulomb = new("nC", D.Charge, 1e-9);
    public static readonly Unit Millijoule = new("mJ", D.Energy, 1e-3);
    public static readonly Unit WattHourPerLitre = new("Wh/L", D.Energy / D.Volume, 3600e3);
    public static readonly Unit Kilovolt = new("kV", D.Voltage, 1e3);
    public static readonly Unit VoltPerMillimetre = new("V/mm", D.Voltage / D.Length, 1e3);
    public static readonly Unit PicosecondPerMillimetre = new("ps/mm", D.Time / D.Length, 1e-9);
    public static readonly Unit PicofaradPerMillimetre = new("pF/mm", D.Capacitance / D.Length, 1e-9);
    public static readonly Unit KilogramPerCubicMetre = new("kg/m³", D.Mass / D.Volume, 1);
    public static readonly Unit MillipascalSecond = new("mPa·s", D.Pressure * D.Time, 1e-3);
    public static readonly Unit MicroPerKelvin = new("ppm/K", Dimension.None / D.Temperature, 1e-6);
    public static readonly Unit PerSquareCentimetre = new("1/cm²", Dimension.None / D.Area, 1e4);
    public static readonly Unit MilligramPerWattHour = new("mg/Wh", D.Mass / D.Energy, 1e-6 / 3600);

    /// <summary>A thousandth of standard gravity.</summary>
    public static readonly Unit MilliGravity = new("mgn", D.Acceleration, 9.80665e-3);

    /// <summary>Noise density. The half power of time has no dimension here, so the acceleration stands alone.</summary>
    public static readonly Unit MicroGravityPerRootHertz = new("µgn/√Hz", D.Acceleration, 9.80665e-6);

    /// <summary>A level; ten decibels are a factor of ten in power.</summary>
    public static readonly Unit Decibel = new("dB", Dimension.None, 1);
}
