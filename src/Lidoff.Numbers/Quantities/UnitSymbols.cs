using D = Lidoff.Numbers.Quantities.Dimensions;

namespace Lidoff.Numbers.Quantities;

/// <summary>The symbols a unit is built of, and which of them take a prefix.</summary>
internal static class UnitSymbols
{
    /// <summary>Symbols that take SI prefixes, with the spelling they are written back in.</summary>
    public static readonly IReadOnlyDictionary<string, Unit> Prefixed = new Dictionary<string, Unit>(StringComparer.Ordinal)
    {
        ["m"] = Units.Metre, ["g"] = Units.Gram, ["s"] = Units.Second, ["sec"] = Units.Second, ["A"] = Units.Ampere,
        ["K"] = Units.Kelvin, ["V"] = Units.Volt, ["Ω"] = Units.Ohm, ["ohm"] = Units.Ohm, ["Ohm"] = Units.Ohm, ["ohms"] = Units.Ohm,
        ["Ohms"] = Units.Ohm, ["R"] = Units.Ohm, ["F"] = Units.Farad, ["H"] = Units.Henry, ["Hz"] = Units.Hertz, ["C"] = Units.Coulomb,
        ["J"] = Units.Joule, ["W"] = Units.Watt, ["N"] = Units.Newton, ["Pa"] = Units.Pascal, ["bar"] = Units.Bar, ["Wh"] = Units.WattHour,
        ["Ah"] = Units.AmpereHour, ["As"] = new("A·s", D.Charge, 1), ["Ws"] = new("W·s", D.Energy, 1), ["eV"] = Units.Electronvolt,
        ["S"] = Units.Siemens, ["T"] = Units.Tesla, ["rad"] = Units.Radian, ["mol"] = new("mol", D.Amount, 1), ["cd"] = new("cd", D.Light, 1),
        ["gf"] = Units.GramForce,
    };

    /// <summary>Symbols that stand as they are.</summary>
    public static readonly IReadOnlyDictionary<string, Unit> Plain = new Dictionary<string, Unit>(StringComparer.Ordinal)
    {
        ["1"] = Units.One, ["%"] = Units.Percent, ["‰"] = Units.PerMille, ["ppm"] = Units.PartsPerMillion, ["ppb"] = new("ppb", Dimension.None, 1e-9),
        ["in"] = Units.Inch, ["inch"] = Units.Inch, ["inches"] = Units.Inch, ["\""] = Units.Inch, ["″"] = Units.Inch,
        ["mil"] = Units.Mil, ["mils"] = Units.Mil, ["thou"] = Units.Mil, ["ft"] = new("ft", D.Length, 0.3048), ["micron"] = Units.Micrometre,
        ["min"] = Units.Minute, ["h"] = Units.Hour, ["hr"] = Units.Hour, ["d"] = Units.Day, ["day"] = Units.Day, ["days"] = Units.Day,
        ["week"] = new("week", D.Time, 604800), ["weeks"] = new("week", D.Time, 604800),
        ["°"] = Units.Degree, ["deg"] = Units.Degree, ["°C"] = Units.DegreeCelsius, ["degC"] = Units.DegreeCelsius,
        ["°F"] = Units.DegreeFahrenheit, ["degF"] = Units.DegreeFahrenheit, ["psi"] = Units.PoundPerSquareInch, ["gn"] = Units.StandardGravity,
        ["rpm"] = new("rpm", D.Frequency, 1.0 / 60), ["bps"] = new("bit/s", D.Frequency, 1), ["baud"] = new("baud", D.Frequency, 1),
    };
}
