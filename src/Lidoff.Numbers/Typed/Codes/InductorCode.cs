using Lidoff.Numbers.Quantities;

namespace Lidoff.Numbers.Typed.Codes;

/// <summary>
/// Inductor codes: three digits in microhenry of which the last counts zeros (101 is 100 µH), R as decimal mark in microhenry (4R7, R47), N as
/// decimal mark in nanohenry (4N7, 47N), with or without a tolerance letter behind (101K). Common practice of makers, no standard; letters as a
/// public table has them, in which L and V differ from resistors' and A to D mean nanohenry.
/// </summary>
public static class InductorCode
{
    /// <summary>Rule name of its readings.</summary>
    public const string Rule = "inductor, microhenry";

    /// <summary>Rule name of readings with N.</summary>
    public const string NanoRule = "inductor, nanohenry";

    private static readonly Dictionary<char, double> Percent = new() { ['E'] = 0.5, ['F'] = 1, ['G'] = 2, ['H'] = 3, ['J'] = 5, ['K'] = 10, ['L'] = 15, ['M'] = 20, ['V'] = 25, ['N'] = 30 };
    private static readonly Dictionary<char, double> Nanohenries = new() { ['A'] = 0.05, ['B'] = 0.1, ['C'] = 0.25, ['D'] = 0.5 };

    /// <summary>Every reading; empty when the text is no such code.</summary>
    public static IReadOnlyList<CodeReading> Read(string? text)
    {
        if (text is not { Length: 3 or 4 } || Henries(text[..3]) is not { } henries) return [];
        var rule = text.AsSpan(0, 3).Contains('N') ? NanoRule : Rule;
        if (text.Length == 3) return [new(henries, Units.Henry, rule, [])];
        if (Percent.TryGetValue(text[3], out var percent)) return [new(henries, Units.Henry, rule, [new(percent, percent, Units.Percent)])];
        return Nanohenries.TryGetValue(text[3], out var nano) ? [new(henries, Units.Henry, rule, [new(nano, nano, Units.Nanohenry)])] : [];
    }

    private static double? Henries(string body)
    {
        if (body.All(char.IsAsciiDigit)) return body[0] == '0' ? null : PowersOfTen.Scale(Two(body[0], body[1]), body[2] - '0' - 6);
        return body switch
        {
            ['R', var a, var b] when Digits(a, b) && (a, b) != ('0', '0') => PowersOfTen.Scale(Two(a, b), -8),
            [var a, 'R', var b] when Digits(a, b) && (a, b) != ('0', '0') => PowersOfTen.Scale(Two(a, b), -7),
            [var a, 'N', var b] when Digits(a, b) && (a, b) != ('0', '0') => PowersOfTen.Scale(Two(a, b), -10),
            [var a, var b, 'N'] when Digits(a, b) && a != '0' => PowersOfTen.Scale(Two(a, b), -9),
            _ => null,
        };
    }

    private static bool Digits(char a, char b) => char.IsAsciiDigit(a) && char.IsAsciiDigit(b);

    private static int Two(char a, char b) => ((a - '0') * 10) + (b - '0');
}
