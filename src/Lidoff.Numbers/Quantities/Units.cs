using D = Lidoff.Numbers.Quantities.Dimensions;

namespace Lidoff.Numbers.Quantities;

/// <summary>The units the trade uses. Factors are exact by definition of the SI unless a source is named beside them.</summary>
public static class Units
{
    /// <summary>A pure number.</summary>
    public static readonly Unit One = new("1", Dimension.None, 1);

    /// <summary>Per cent.</summary>
    public static readonly Unit Percent = new("%", Dimension.None, 0.01);

    /// <summary>Per mille.</summary>
    public static readonly Unit PerMille = new("‰", Dimension.None, 1e-3);

    /// <summary>Parts per million.</summary>
    public static readonly Unit PartsPerMillion = new("ppm", Dimension.None, 1e-6);

    /// <summary>Metre.</summary>
    public static readonly Unit Metre = new("m", D.Length, 1);

    /// <summary>Centimetre.</summary>
    public static readonly Unit Centimetre = new("cm", D.Length, 1e-2);

    /// <summary>Millimetre.</summary>
    public static readonly Unit Millimetre = new("mm", D.Length, 1e-3);

    /// <summary>Micrometre.</summary>
    public static readonly Unit Micrometre = new("µm", D.Length, 1e-6);

    /// <summary>Nanometre.</summary>
    public static readonly Unit Nanometre = new("nm", D.Length, 1e-9);

    /// <summary>Inch, 25.4 mm (exact since the international yard and pound agreement of 1959).</summary>
    public static readonly Unit Inch = new("in", D.Length, 0.0254);

    /// <summary>A thousandth of an inch, 25.4 µm. Never a millimetre.</summary>
    public static readonly Unit Mil = new("mil", D.Length, 25.4e-6);

    /// <summary>Square millimetre.</summary>
    public static readonly Unit SquareMillimetre = new("mm²", D.Area, 1e-6);

    /// <summary>Cubic millimetre.</summary>
    public static readonly Unit CubicMillimetre = new("mm³", D.Volume, 1e-9);

    /// <summary>Second.</summary>
    public static readonly Unit Second = new("s", D.Time, 1);

    /// <summary>Millisecond.</summary>
    public static readonly Unit Millisecond = new("ms", D.Time, 1e-3);

    /// <summary>Microsecond.</summary>
    public static readonly Unit Microsecond = new("µs", D.Time, 1e-6);

    /// <summary>Nanosecond.</summary>
    public static readonly Unit Nanosecond = new("ns", D.Time, 1e-9);

    /// <summary>Minute.</summary>
    public static readonly Unit Minute = new("min", D.Time, 60);

    /// <summary>Hour.</summary>
    public static readonly Unit Hour = new("h", D.Time, 3600);

    /// <summary>Day of 24 hours.</summary>
    public static readonly Unit Day = new("d", D.Time, 86400);

    /// <summary>Volt.</summary>
    public static readonly Unit Volt = new("V", D.Voltage, 1);

    /// <summary>Millivolt.</summary>
    public static readonly Unit Millivolt = new("mV", D.Voltage, 1e-3);

    /// <summary>Ampere.</summary>
    public static readonly Unit Ampere = new("A", D.Current, 1);

    /// <summary>Milliampere.</summary>
    public static readonly Unit Milliampere = new("mA", D.Current, 1e-3);

    /// <summary>Microampere.</summary>
    public static readonly Unit Microampere = new("µA", D.Current, 1e-6);

    /// <summary>Nanoampere.</summary>
    public static readonly Unit Nanoampere = new("nA", D.Current, 1e-9);

    /// <summary>Ohm.</summary>
    public static readonly Unit Ohm = new("Ω", D.Resistance, 1);

    /// <summary>Milliohm.</summary>
    public static readonly Unit Milliohm = new("mΩ", D.Resistance, 1e-3);

    /// <summary>Kiloohm.</summary>
    public static readonly Unit Kiloohm = new("kΩ", D.Resistance, 1e3);

    /// <summary>Siemens.</summary>
    public static readonly Unit Siemens = new("S", D.Conductance, 1);

    /// <summary>Farad.</summary>
    public static readonly Unit Farad = new("F", D.Capacitance, 1);

    /// <summary>Microfarad.</summary>
    public static readonly Unit Microfarad = new("µF", D.Capacitance, 1e-6);

    /// <summary>Nanofarad.</summary>
    public static readonly Unit Nanofarad = new("nF", D.Capacitance, 1e-9);

    /// <summary>Picofarad.</summary>
    public static readonly Unit Picofarad = new("pF", D.Capacitance, 1e-12);

    /// <summary>Henry.</summary>
    public static readonly Unit Henry = new("H", D.Inductance, 1);

    /// <summary>Nanohenry.</summary>
    public static readonly Unit Nanohenry = new("nH", D.Inductance, 1e-9);

    /// <summary>Microhenry.</summary>
    public static readonly Unit Microhenry = new("µH", D.Inductance, 1e-6);

    /// <summary>Hertz.</summary>
    public static readonly Unit Hertz = new("Hz", D.Frequency, 1);

    /// <summary>Kilohertz.</summary>
    public static readonly Unit Kilohertz = new("kHz", D.Frequency, 1e3);

    /// <summary>Megahertz.</summary>
    public static readonly Unit Megahertz = new("MHz", D.Frequency, 1e6);

    /// <summary>Coulomb; the same as an ampere-second.</summary>
    public static readonly Unit Coulomb = new("C", D.Charge, 1);

    /// <summary>Milliampere-second, 1 mC.</summary>
    public static readonly Unit MilliampereSecond = new("mA·s", D.Charge, 1e-3);

    /// <summary>Ampere-hour, 3600 C.</summary>
    public static readonly Unit AmpereHour = new("Ah", D.Charge, 3600);

    /// <summary>Milliampere-hour, 3.6 C.</summary>
    public static readonly Unit MilliampereHour = new("mAh", D.Charge, 3.6);

    /// <summary>Microampere-hour, 3.6 mC.</summary>
    public static readonly Unit MicroampereHour = new("µAh", D.Charge, 3.6e-3);

    /// <summary>Joule.</summary>
    public static readonly Unit Joule = new("J", D.Energy, 1);

    /// <summary>Watt-hour, 3600 J.</summary>
    public static readonly Unit WattHour = new("Wh", D.Energy, 3600);

    /// <summary>Milliwatt-hour, 3.6 J.</summary>
    public static readonly Unit MilliwattHour = new("mWh", D.Energy, 3.6);

    /// <summary>Electronvolt (exact since the SI of 2019).</summary>
    public static readonly Unit Electronvolt = new("eV", D.Energy, 1.602176634e-19);

    /// <summary>Watt.</summary>
    public static readonly Unit Watt = new("W", D.Power, 1);

    /// <summary>Milliwatt.</summary>
    public static readonly Unit Milliwatt = new("mW", D.Power, 1e-3);

    /// <summary>Kelvin.</summary>
    public static readonly Unit Kelvin = new("K", D.Temperature, 1);

    /// <summary>Degree Celsius.</summary>
    public static readonly Unit DegreeCelsius = new("°C", D.Temperature, 1, 273.15);

    /// <summary>Degree Fahrenheit: 32 °F is 0 °C, 212 °F is 100 °C.</summary>
    public static readonly Unit DegreeFahrenheit = new("°F", D.Temperature, 5.0 / 9, 459.67 * 5 / 9);

    /// <summary>Kilogram.</summary>
    public static readonly Unit Kilogram = new("kg", D.Mass, 1);

    /// <summary>Gram.</summary>
    public static readonly Unit Gram = new("g", D.Mass, 1e-3);

    /// <summary>Milligram.</summary>
    public static readonly Unit Milligram = new("mg", D.Mass, 1e-6);

    /// <summary>Newton.</summary>
    public static readonly Unit Newton = new("N", D.Force, 1);

    /// <summary>Gram-force, 9.80665 mN (standard gravity, 3rd CGPM 1901).</summary>
    public static readonly Unit GramForce = new("gf", D.Force, 9.80665e-3);

    /// <summary>Metre a second, a second.</summary>
    public static readonly Unit MetrePerSecondSquared = new("m/s²", D.Acceleration, 1);

    /// <summary>Standard gravity, 9.80665 m/s² (3rd CGPM 1901). Written <c>gn</c>, because g is the gram.</summary>
    public static readonly Unit StandardGravity = new("gn", D.Acceleration, 9.80665);

    /// <summary>Metre a second.</summary>
    public static readonly Unit MetrePerSecond = new("m/s", D.Speed, 1);

    /// <summary>Pascal.</summary>
    public static readonly Unit Pascal = new("Pa", D.Pressure, 1);

    /// <summary>Hectopascal, as barometers show it.</summary>
    public static readonly Unit Hectopascal = new("hPa", D.Pressure, 100);

    /// <summary>Bar, 100 kPa.</summary>
    public static readonly Unit Bar = new("bar", D.Pressure, 1e5);

    /// <summary>Pound-force a square inch (4.4482216152605 N over 0.0254² m², from the 1959 pound and standard gravity).</summary>
    public static readonly Unit PoundPerSquareInch = new("psi", D.Pressure, 4.4482216152605 / (0.0254 * 0.0254));

    /// <summary>Radian.</summary>
    public static readonly Unit Radian = new("rad", Dimension.None, 1);

    /// <summary>Degree of arc.</summary>
    public static readonly Unit Degree = new("°", Dimension.None, Math.PI / 180);

    /// <summary>Tesla.</summary>
    public static readonly Unit Tesla = new("T", D.FluxDensity, 1);
}
