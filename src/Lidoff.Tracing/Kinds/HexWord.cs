using System.Globalization;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Typed;

namespace Lidoff.Tracing.Kinds;

/// <summary>Reads numbers that are written in hexadecimal: <c>"0x68"</c>.</summary>
internal static class HexWord
{
    /// <summary>
    /// A number of <paramref name="digits"/> hexadecimal digits at most (16 or fewer) that must be there; zero when at fault. It
    /// must begin with 0x, because 71 alone can be either.
    /// </summary>
    public static ulong Read(PayloadReader reader, string key, int digits)
    {
        var text = reader.Text(key, Points.LongestName);
        if (text.Length == 0) return 0;
        var fits = text.Length > 2 && text.Length <= digits + 2 && text.StartsWith("0x", StringComparison.OrdinalIgnoreCase) && text[2..].All(char.IsAsciiHexDigit);
        if (fits) return ulong.Parse(text.AsSpan(2), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);
        reader.Fail(key, string.Create(CultureInfo.InvariantCulture, $"a hexadecimal number such as \"0x71\" of at most {digits} digits"));
        return 0;
    }

    /// <summary>A 7-bit address that may be missing; a fault offers the readings when it has more than one.</summary>
    public static int? Address(PayloadReader reader, string key)
    {
        if (reader.OptionalText(key, Points.LongestName) is not { } text) return null;
        var address = TypedAddress.Read(text, key);
        if (address.TryValue(out var value)) return value;
        reader.Fail(key, address.Faults[0].Expected);
        return null;
    }
}
