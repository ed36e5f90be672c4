namespace Lidoff.Numbers.Quantities;

/// <summary>The dimensions the trade has a word for, and that word.</summary>
public static class Dimensions
{
    /// <summary>Metre.</summary>
    public static readonly Dimension Length = new(Length: 1);

    /// <summary>Square metre.</summary>
    public static readonly Dimension Area = new(Length: 2);

    /// <summary>Cubic metre.</summary>
    public static readonly Dimension Volume = new(Length: 3);

    /// <summary>Kilogram.</summary>
    public static readonly Dimension Mass = new(Mass: 1);

    /// <summary>Second.</summary>
    public static readonly Dimension Time = new(Time: 1);

    /// <summary>Hertz.</summary>
    public static readonly Dimension Frequency = new(Time: -1);

    /// <summary>Metre a second.</summary>
    public static readonly Dimension Speed = new(Length: 1, Time: -1);

    /// <summary>Metre a second, a second.</summary>
    public static readonly Dimension Acceleration = new(Length: 1, Time: -2);

    /// <summary>Newton.</summary>
    public static readonly Dimension Force = new(Length: 1, Mass: 1, Time: -2);

    /// <summary>Pascal.</summary>
    public static readonly Dimension Pressure = new(Length: -1, Mass: 1, Time: -2);

    /// <summary>Joule.</summary>
    public static readonly Dimension Energy = new(Length: 2, Mass: 1, Time: -2);

    /// <summary>Watt.</summary>
    public static readonly Dimension Power = new(Length: 2, Mass: 1, Time: -3);

    /// <summary>Ampere.</summary>
    public static readonly Dimension Current = new(Current: 1);

    /// <summary>Coulomb.</summary>
    public static readonly Dimension Charge = new(Time: 1, Current: 1);

    /// <summary>Volt.</summary>
    public static readonly Dimension Voltage = new(Length: 2, Mass: 1, Time: -3, Current: -1);

    /// <summary>Ohm.</summary>
    public static readonly Dimension Resistance = new(Length: 2, Mass: 1, Time: -3, Current: -2);

    /// <summary>Siemens.</summary>
    public static readonly Dimension Conductance = new(Length: -2, Mass: -1, Time: 3, Current: 2);

    /// <summary>Farad.</summary>
    public static readonly Dimension Capacitance = new(Length: -2, Mass: -1, Time: 4, Current: 2);

    /// <summary>Henry.</summary>
    public static readonly Dimension Inductance = new(Length: 2, Mass: 1, Time: -2, Current: -2);

    /// <summary>Tesla.</summary>
    public static readonly Dimension FluxDensity = new(Mass: 1, Time: -2, Current: -1);

    /// <summary>Kelvin.</summary>
    public static readonly Dimension Temperature = new(Temperature: 1);

    /// <summary>Mole.</summary>
    public static readonly Dimension Amount = new(Amount: 1);

    /// <summary>Candela.</summary>
    public static readonly Dimension Light = new(Light: 1);

    private static readonly Dictionary<Dimension, string> Names = new()
    {
        [Dimension.None] = "a pure number", [Length] = "length", [Area] = "area", [Volume] = "volume", [Mass] = "mass", [Time] = "time",
        [Frequency] = "frequency", [Speed] = "speed", [Acceleration] = "acceleration", [Force] = "force", [Pressure] = "pressure",
        [Energy] = "energy", [Power] = "power", [Current] = "current", [Charge] = "charge", [Voltage] = "voltage",
        [Resistance] = "resistance", [Conductance] = "conductance", [Capacitance] = "capacitance", [Inductance] = "inductance",
        [FluxDensity] = "magnetic flux density", [Temperature] = "temperature", [Amount] = "amount of substance", [Light] = "luminous intensity",
    };

    /// <summary>The word for a dimension ("charge"); one without a word is written in SI base units ("m·s⁻³").</summary>
    public static string Name(Dimension dimension) => Names.TryGetValue(dimension, out var name) ? name : BaseUnits(dimension);

    /// <summary>True when the dimension has a word of its own.</summary>
    public static bool HasName(Dimension dimension) => Names.ContainsKey(dimension);

    /// <summary>A dimension in SI base units: <c>m²·kg·s⁻³·A⁻¹</c>; a pure number is <c>1</c>.</summary>
    public static string BaseUnits(Dimension dimension)
    {
        (string Symbol, int Power)[] parts =
        [
            ("m", dimension.Length), ("kg", dimension.Mass), ("s", dimension.Time), ("A", dimension.Current),
            ("K", dimension.Temperature), ("mol", dimension.Amount), ("cd", dimension.Light),
        ];
        var written = parts.Where(part => part.Power != 0).Select(part => part.Symbol + (part.Power == 1 ? "" : Superscript(part.Power)));
        var text = string.Join("·", written);
        return text.Length == 0 ? "1" : text;
    }

    private static string Superscript(int power) =>
        string.Concat(power.ToString(System.Globalization.CultureInfo.InvariantCulture).Select(c => c == '-' ? '⁻' : "⁰¹²³⁴⁵⁶⁷⁸⁹"[c - '0']));
}
