using Lidoff.Numbers.Quantities;

namespace Lidoff.Numbers.Typed.Codes;

/// <summary>
/// A letter for the multiplier and two digits for a place in the E24 series on 2 % (01 to 24) and 5 % (25 to 48) resistors, in E12 on 10 % ones (49
/// to 60): D03 is 120 kΩ ± 2 %, E31 1.8 MΩ ± 5 %. Common practice by a public table, no standard; its letters are those of EIA-96.
/// </summary>
public static class E24Code
{
    /// <summary>Rule name of its readings.</summary>
    public const string Rule = "letter and place in E24";

    /// <summary>Every reading; empty when the text is no such code.</summary>
    public static IReadOnlyList<CodeReading> Read(string? text)
    {
        if (text is not { Length: 3 } || !char.IsAsciiDigit(text[1]) || !char.IsAsciiDigit(text[2])) return [];
        var place = (text[1] - '0') * 10 + (text[2] - '0');
        if (place is 0 or > 60) return [];
        var (figures, percent) = place <= 24 ? (ESeries.Figures(24)[place - 1], 2) : place <= 48 ? (ESeries.Figures(24)[place - 25], 5) : (ESeries.Figures(12)[place - 49], 10);
        // The table of this code pairs Y with R and X with S, and counts in hundreds as EIA-96 does.
        int? exponent = text[0] switch { 'Z' => -2, 'Y' or 'R' => -1, 'X' or 'S' => 0, 'A' => 1, 'B' => 2, 'C' => 3, 'D' => 4, 'E' => 5, 'F' => 6, _ => null };
        return exponent is { } e ? [new(PowersOfTen.Scale(figures, e), Units.Ohm, Rule, [Tolerance.Percent(percent)])] : [];
    }
}
