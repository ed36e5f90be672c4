using Lidoff.Numbers.Quantities;

namespace Lidoff.Numbers.Typed.Codes;

/// <summary>
/// Capacitor codes of EIA-198, all in picofarad (from memory): three digits of which the last counts zeros (8: ×0.01, 9: ×0.1),
/// R as decimal mark (4R7), a tolerance letter behind, and the two-character letter-digit code (A5 is 1.0 × 10⁵ pF).
/// </summary>
public static class CapacitorCode
{
    /// <summary>Rule name of digit readings.</summary>
    public const string DigitRule = "capacitor digits, EIA-198";

    /// <summary>Rule name of letter-digit readings.</summary>
    public const string LetterRule = "capacitor letter and digit, EIA-198";

    // Capitals run through the E24 series without I and O; the small letters fill in halves and whole numbers.
    private const string Capitals = "ABCDEFGHJKLMNPQRSTUVWXYZ";
    private static readonly Dictionary<char, int> SmallTenths = new() { ['a'] = 25, ['b'] = 35, ['d'] = 40, ['e'] = 45, ['f'] = 50, ['m'] = 60, ['n'] = 70, ['t'] = 80, ['y'] = 90 };

    /// <summary>Every reading; empty when the text is no such code.</summary>
    public static IReadOnlyList<CodeReading> Read(string? text) => text switch
    {
        { Length: 2 } => LetterDigit(text),
        { Length: 3 } => Digits(text, null),
        { Length: 4 } => Digits(text[..3], text[3]),
        _ => [],
    };

    private static IReadOnlyList<CodeReading> Digits(string body, char? letter)
    {
        if (Farads(body) is not { } farads) return [];
        var tolerances = letter is { } c ? ToleranceLetters.Read(c, farads) : [];
        return letter is not null && tolerances.Count == 0 ? [] : [new(farads, Units.Farad, DigitRule, tolerances)];
    }

    private static double? Farads(string body)
    {
        if (!char.IsAsciiDigit(body[0]) || !char.IsAsciiDigit(body[2])) return null;
        if (body[1] == 'R') return body is "0R0" ? null : PowersOfTen.Scale((body[0] - '0') * 10 + (body[2] - '0'), -13);
        if (!char.IsAsciiDigit(body[1]) || body[0] == '0') return null;
        var zeros = body[2] switch { '8' => -2, '9' => -1, var c => c - '0' };
        return PowersOfTen.Scale((body[0] - '0') * 10 + (body[1] - '0'), zeros - 12);
    }

    private static IReadOnlyList<CodeReading> LetterDigit(string text)
    {
        if (!char.IsAsciiDigit(text[1])) return [];
        var at = Capitals.IndexOf(text[0], StringComparison.Ordinal);
        var tenths = at >= 0 ? ESeries.Figures(24)[at] : SmallTenths.GetValueOrDefault(text[0]);
        if (tenths == 0) return [];
        var zeros = text[1] == '9' ? -1 : text[1] - '0';
        return [new(PowersOfTen.Scale(tenths, zeros - 13), Units.Farad, LetterRule, [])];
    }
}
