namespace Lidoff.Numbers.Typed.Codes;

/// <summary>
/// Rated voltages in code, volt. Two characters (2A is 100 V: a digit for the decade, a letter for the figure): a public table of EIA voltage
/// codes, its worked example 2A474J. One letter before three digits (A475 is 10 V): a published note on marks of small electrolytic and
/// tantalum capacitors, and one maker's table of the same letters.
/// </summary>
public static class CapacitorVoltage
{
    // Of two public tables what they agree in, and 0E, 0L, 1D, 1V of one of them. 1V is 35 V and 2V 350 V in both.
    private static readonly Dictionary<string, double> Pairs = new(StringComparer.Ordinal)
    {
        ["0E"] = 2.5, ["0G"] = 4, ["0L"] = 5.5, ["0J"] = 6.3, ["1A"] = 10, ["1C"] = 16, ["1D"] = 20, ["1E"] = 25, ["1V"] = 35, ["1H"] = 50, ["1J"] = 63, ["1K"] = 80,
        ["2A"] = 100, ["2B"] = 125, ["2C"] = 160, ["2D"] = 200, ["2E"] = 250, ["2F"] = 315, ["2V"] = 350, ["2G"] = 400, ["2W"] = 450, ["2H"] = 500, ["2J"] = 630, ["3A"] = 1000,
    };

    private static readonly Dictionary<char, double> Letters = new() { ['e'] = 2.5, ['G'] = 4, ['J'] = 6.3, ['A'] = 10, ['C'] = 16, ['D'] = 20, ['E'] = 25, ['V'] = 35, ['H'] = 50 };

    /// <summary>Volts of a digit and a letter; null where they mean none.</summary>
    public static double? OfPair(string pair) => Pairs.TryGetValue(pair, out var volts) ? volts : null;

    /// <summary>Volts of a letter before three digits; null where it means none. A small e is 2.5 V, a capital one 25 V.</summary>
    public static double? OfLetter(char letter) => Letters.TryGetValue(letter, out var volts) ? volts : null;
}
