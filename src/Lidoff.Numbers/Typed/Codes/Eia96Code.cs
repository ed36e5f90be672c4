using Lidoff.Numbers.Quantities;

namespace Lidoff.Numbers.Typed.Codes;

/// <summary>
/// Two digits for a place in the E96 series and a letter for the multiplier (01C is 10 kΩ), on 1 % resistors; also in IEC
/// 60062:2016. Public tables disagree on R and S, so both readings of them are given.
/// </summary>
public static class Eia96Code
{
    /// <summary>Rule name of its readings.</summary>
    public const string Rule = "EIA-96";

    /// <summary>Every reading; empty when the text is no such code.</summary>
    public static IReadOnlyList<CodeReading> Read(string? text)
    {
        if (text is not { Length: 3 } || !char.IsAsciiDigit(text[0]) || !char.IsAsciiDigit(text[1])) return [];
        var place = (text[0] - '0') * 10 + (text[1] - '0');
        if (place is 0 or > 96) return [];
        return [.. Exponents(text[2]).Select(exponent =>
            new CodeReading(PowersOfTen.Scale(ESeries.Figures(96)[place - 1], exponent), Units.Ohm, Rule, [new(1, 1, Units.Percent)]))];
    }

    private static int[] Exponents(char letter) => letter switch
    {
        'Z' => [-3],
        'Y' => [-2],
        'X' => [-1],
        'A' => [0],
        'B' or 'H' => [1],
        'C' => [2],
        'D' => [3],
        'E' => [4],
        'F' => [5],
        'R' or 'S' => [-2, -1],
        _ => [],
    };
}
