using Lidoff.Numbers.Quantities;

namespace Lidoff.Numbers.Typed.Codes;

/// <summary>Tolerance letters of IEC 60062 (table from memory; R for ±0.01 % on older parts).</summary>
public static class ToleranceLetters
{
    private static readonly Dictionary<char, (double Below, double Above)> Percent = new()
    {
        ['E'] = (0.005, 0.005), ['L'] = (0.01, 0.01), ['R'] = (0.01, 0.01), ['P'] = (0.02, 0.02), ['W'] = (0.05, 0.05), ['B'] = (0.1, 0.1),
        ['C'] = (0.25, 0.25), ['D'] = (0.5, 0.5), ['F'] = (1, 1), ['G'] = (2, 2), ['H'] = (3, 3), ['J'] = (5, 5), ['K'] = (10, 10),
        ['M'] = (20, 20), ['N'] = (30, 30), ['Q'] = (10, 30), ['T'] = (10, 50), ['S'] = (20, 50), ['Z'] = (20, 80),
    };

    private static readonly Dictionary<char, double> SmallPicofarads = new() { ['B'] = 0.1, ['C'] = 0.25, ['D'] = 0.5, ['F'] = 1, ['G'] = 2 };

    /// <summary>
    /// Every meaning of a letter; empty when it has none. Below 10 pF the letters B, C, D, F, G mean picofarads, which is
    /// said by passing the capacitance in farad; a resistor passes null.
    /// </summary>
    public static IReadOnlyList<Tolerance> Read(char letter, double? farads = null)
    {
        if (farads < 9.9999e-12 && SmallPicofarads.TryGetValue(letter, out var pf)) return [new(pf, pf, Units.Picofarad)];
        return Percent.TryGetValue(letter, out var percent) ? [new(percent.Below, percent.Above, Units.Percent)] : [];
    }
}
