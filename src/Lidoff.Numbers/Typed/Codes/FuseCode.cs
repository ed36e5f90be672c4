using System.Globalization;
using Lidoff.Numbers.Quantities;

namespace Lidoff.Numbers.Typed.Codes;

/// <summary>
/// What stands on fuses: how fast (FF, F, M, T, TT), rated current (2A, 315mA, 3.15A), breaking capacity (L or H) and volts, of which only the current
/// must be there. By a published note on the marks of cartridge fuses (letters of IEC 60127-1). What chip fuses carry is each maker's own.
/// </summary>
public static class FuseCode
{
    /// <summary>Rule name of its readings.</summary>
    public const string Rule = "fuse, rated current";

    /// <summary>Every reading; empty when the text is no such mark.</summary>
    public static IReadOnlyList<CodeReading> Read(string? text)
    {
        var left = (text ?? "").Replace(" ", "", StringComparison.Ordinal);
        if (left.Length is < 2 or > 14) return [];
        foreach (var speed in (string[])["FF", "TT", "F", "T", "M"])
        {
            if (!left.StartsWith(speed, StringComparison.Ordinal)) continue;
            left = left[speed.Length..];
            break;
        }

        if (Number(ref left) is not (> 0 and <= 100_000 and { } amount)) return [];
        var milli = left.StartsWith("mA", StringComparison.Ordinal);
        if (!milli && !left.StartsWith('A')) return [];
        left = left[(milli ? 2 : 1)..];
        var amperes = PowersOfTen.Scale(amount, milli ? -3 : 0);
        if (amperes > 100) return [];
        if (left.Length > 0 && left[0] is 'L' or 'H') left = left[1..];
        if (left.Length == 0) return [new(amperes, Units.Ampere, Rule, [])];
        return left[^1] == 'V' && Number(ref left) is > 0 and <= 1500 and { } volts && left == "V" ? [new(amperes, Units.Ampere, Rule, []) { RatedVolts = volts }] : [];
    }

    private static double? Number(ref string left)
    {
        var end = 0;
        while (end < left.Length && (char.IsAsciiDigit(left[end]) || left[end] == '.')) end++;
        if (!double.TryParse(left[..end], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) || !double.IsFinite(number)) return null;
        left = left[end..];
        return number;
    }
}
