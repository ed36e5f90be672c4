using Lidoff.Numbers.Quantities;

namespace Lidoff.Numbers.Typed.Codes;

/// <summary>Three- and four-digit resistor codes: the last digit counts zeros (473 is 47 kΩ, 4992 is 49.9 kΩ). Only zeros is a link.</summary>
public static class ResistorDigits
{
    /// <summary>Rule name of its readings.</summary>
    public const string Rule = "resistor digits, IEC 60062";

    /// <summary>Rule name of a zero-ohm link.</summary>
    public const string ZeroRule = "zero-ohm link";

    /// <summary>Every reading; empty when the text is no such code.</summary>
    public static IReadOnlyList<CodeReading> Read(string? text)
    {
        if (IsZeroOhm(text)) return [new(0, Units.Ohm, ZeroRule, [])];
        if (text is not { Length: 3 or 4 } || !text.All(char.IsAsciiDigit) || text[0] == '0') return [];
        var figures = text[..^1].Aggregate(0, (sum, c) => sum * 10 + (c - '0'));
        return [new(PowersOfTen.Scale(figures, text[^1] - '0'), Units.Ohm, Rule, [])];
    }

    /// <summary>True for 0, 00, 000, 0000, 0R, 0R0, R000 and the like.</summary>
    public static bool IsZeroOhm(string? text) =>
        text is { Length: >= 1 and <= 5 } && text.All(c => c is '0' or 'R') && text.Count(c => c == 'R') <= 1 && text.Contains('0', StringComparison.Ordinal);
}
