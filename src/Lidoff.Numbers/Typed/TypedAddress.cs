using System.Globalization;
using Lidoff.Numbers.Failing;

namespace Lidoff.Numbers.Typed;

/// <summary>A 7-bit bus address as somebody typed it.</summary>
public static class TypedAddress
{
    /// <summary>
    /// Reads <c>0x68</c>, <c>68h</c>, <c>$68</c>; 0 to 0x7F. Digits alone are asked about, because 68 can be hexadecimal or
    /// decimal, and so is what has 8 bits, because it may carry the read/write bit.
    /// </summary>
    public static Outcome<int> Read(string? text, string where)
    {
        var cleaned = TypedText.Of(text, where);
        if (!cleaned.TryValue(out var typed)) return Outcome<int>.Failed(cleaned.Faults);
        var plain = typed.Plain;
        var marked = true;
        string digits;
        if (plain.StartsWith("0x", StringComparison.OrdinalIgnoreCase)) digits = plain[2..];
        else if (plain.StartsWith('$')) digits = plain[1..];
        else if (plain[^1] is 'h' or 'H') digits = plain[..^1];
        else (digits, marked) = (plain, plain.Any(c => c is >= 'A' and <= 'F' or >= 'a' and <= 'f'));
        if (digits.Length is 0 or > 4 || !digits.All(char.IsAsciiHexDigit)) return TypedSentences.NotAnAddress(where, plain);
        var value = int.Parse(digits, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);
        if (!marked)
        {
            var dec = int.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture);
            if (dec > 9 && dec <= 0x7F && value <= 0x7F) return TypedSentences.HexOrDecimal(where, plain, value, dec);
            if (value > 0x7F && dec <= 0x7F) value = dec;
        }

        if (value <= 0x7F) return value;
        return value <= 0xFF ? TypedSentences.EightBitAddress(where, plain, value) : TypedSentences.NotAnAddress(where, plain);
    }
}
