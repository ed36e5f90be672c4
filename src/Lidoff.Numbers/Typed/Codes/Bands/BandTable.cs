namespace Lidoff.Numbers.Typed.Codes.Bands;

/// <summary>
/// What each colour means as digit, multiplier, tolerance and temperature coefficient. IEC 60062:2016 as two public tables give it; the tolerance of
/// grey is 0.01 % there and 0.05 % on older parts, so it has both.
/// </summary>
public static class BandTable
{
    /// <summary>The colours, in order.</summary>
    public static IReadOnlyList<BandColour> All { get; } = Enum.GetValues<BandColour>();

    /// <summary>Digit; null of a metal and of pink.</summary>
    public static int? Digit(BandColour colour) => colour <= BandColour.White ? (int)colour : null;

    /// <summary>Power of ten that it multiplies by.</summary>
    public static int Exponent(BandColour colour) => colour switch { BandColour.Gold => -1, BandColour.Silver => -2, BandColour.Pink => -3, _ => (int)colour };

    /// <summary>Tolerances of a resistor, per cent; none where the colour means none.</summary>
    public static IReadOnlyList<double> Percents(BandColour colour) => colour switch
    {
        BandColour.Brown => [1],
        BandColour.Red => [2],
        BandColour.Orange => [0.05],
        BandColour.Yellow => [0.02],
        BandColour.Green => [0.5],
        BandColour.Blue => [0.25],
        BandColour.Violet => [0.1],
        BandColour.Grey => [0.05, 0.01],
        BandColour.Gold => [5],
        BandColour.Silver => [10],
        _ => [],
    };

    /// <summary>Tolerance of an inductor, per cent: gold 5, silver 10 as public tables have them, black 20 from memory; null for other colours.</summary>
    public static double? InductorPercent(BandColour colour) => colour switch { BandColour.Gold => 5, BandColour.Silver => 10, BandColour.Black => 20, _ => null };

    /// <summary>Temperature coefficient, parts per million a kelvin; null where the colour means none.</summary>
    public static double? DriftPpm(BandColour colour) => colour switch
    {
        BandColour.Black => 250,
        BandColour.Brown => 100,
        BandColour.Red => 50,
        BandColour.Orange => 15,
        BandColour.Yellow => 25,
        BandColour.Green => 20,
        BandColour.Blue => 10,
        BandColour.Violet => 5,
        BandColour.Grey => 1,
        _ => null,
    };
}
