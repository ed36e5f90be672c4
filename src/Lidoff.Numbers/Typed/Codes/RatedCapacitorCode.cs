using System.Globalization;
using Lidoff.Numbers.Quantities;

namespace Lidoff.Numbers.Typed.Codes;

/// <summary>
/// Capacitor marks that hold a rated voltage: a voltage letter and three digits on small electrolytic and tantalum parts (A475 is 4.7 µF, 10 V), a
/// voltage pair before digits on film parts (2A474J is 470 nF ± 5 %, 100 V), a voltage or a maker's letter before letter and digit (KA2 is 100 pF),
/// digits or microfarads and volts written out (10 6V, 105K 330V).
/// </summary>
public static class RatedCapacitorCode
{
    /// <summary>Rule name of a voltage letter with three digits.</summary>
    public const string LetterRule = "electrolytic or tantalum, voltage letter";

    /// <summary>Rule name of a voltage letter with letter and digit.</summary>
    public const string ShortRule = "tantalum, voltage letter, letter and digit";

    /// <summary>Rule name of letter and digit behind a maker's letter.</summary>
    public const string MakerRule = "maker's letter, capacitor letter and digit";

    /// <summary>Rule name of a voltage pair before digits.</summary>
    public const string PairRule = "capacitor digits with EIA voltage";

    /// <summary>Rule name of volts written out.</summary>
    public const string VoltsRule = "capacitor, volts written out";

    // The least that is built as an electrolytic or tantalum part, farad. From memory.
    private const double LeastElectrolytic = 0.09e-6;

    /// <summary>Every reading; empty when the text is no such mark.</summary>
    public static IReadOnlyList<CodeReading> Read(string? text)
    {
        if (text is not { Length: >= 3 and <= 12 }) return [];
        if (text.Contains(' ', StringComparison.Ordinal)) return [.. WrittenOut(text)];
        return [.. Lettered(text), .. Short(text), .. Paired(text)];
    }

    private static IEnumerable<CodeReading> Lettered(string text)
    {
        if (text.Length != 4 || text.AsSpan(1).ContainsAnyExceptInRange('0', '9') || CapacitorVoltage.OfLetter(text[0]) is not { } volts) yield break;
        foreach (var plain in CapacitorCode.Read(text[1..]).Where(plain => plain.Si >= LeastElectrolytic)) yield return plain with { Rule = LetterRule, RatedVolts = volts };
    }

    private static IEnumerable<CodeReading> Short(string text)
    {
        if (text.Length != 3 || !char.IsAsciiLetter(text[0])) yield break;
        foreach (var plain in CapacitorCode.Read(text[1..]))
        {
            // The letters of voltages before letter and digit are those before digits: from memory.
            if (plain.Si >= LeastElectrolytic && CapacitorVoltage.OfLetter(text[0]) is { } volts) yield return plain with { Rule = ShortRule, RatedVolts = volts };
            if (char.IsAsciiLetterUpper(text[0])) yield return plain with { Rule = MakerRule };
        }
    }

    private static IEnumerable<CodeReading> Paired(string text)
    {
        if (text.Length is < 5 or > 6 || CapacitorVoltage.OfPair(text[..2]) is not { } volts) yield break;
        foreach (var plain in CapacitorCode.Read(text[2..])) yield return plain with { Rule = PairRule, RatedVolts = volts };
    }

    // "10 6V" is 10 µF; "105K 330V" is a code. Two figures or a decimal mark are microfarads, three digits both.
    private static IEnumerable<CodeReading> WrittenOut(string text)
    {
        var parts = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length != 2 || parts[1].Length < 2 || parts[1][^1] is not ('V' or 'v') || Plain(parts[1][..^1]) is not (> 0 and <= 4000 and { } volts)) yield break;
        foreach (var plain in CapacitorCode.Read(parts[0]).Where(plain => plain.Rule == CapacitorCode.DigitRule)) yield return plain with { Rule = VoltsRule, RatedVolts = volts };
        foreach (var plain in RkmCode.Read(parts[0]).Where(plain => plain.Unit == Units.Farad)) yield return plain with { Rule = VoltsRule, RatedVolts = volts };
        if (Plain(parts[0]) is > 0 and <= 100_000 and { } micro) yield return new(PowersOfTen.Scale(micro, -6), Units.Farad, VoltsRule, []) { RatedVolts = volts };
    }

    private static double? Plain(string text) => double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number) ? number : null;
}
