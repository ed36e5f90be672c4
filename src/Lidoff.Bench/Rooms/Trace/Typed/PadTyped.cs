using System.Globalization;
using Lidoff.Bench.Working;
using Lidoff.Numbers.Failing;
using Lidoff.Tracing.Kinds;

namespace Lidoff.Bench.Rooms.Trace.Typed;

/// <summary>
/// A pad typed on one line: <c>U3.13 VDD power_in top</c>, <c>TP5 reset bottom</c>. The point comes first; a word of <see cref="PadRoles"/>
/// is its role, top or bottom its side, all else the name a pin-out gives it.
/// </summary>
/// <param name="Point">The point.</param>
/// <param name="Name">Its name; empty when not typed.</param>
/// <param name="Role">Its role; empty when not typed.</param>
/// <param name="Side">"top", "bottom" or empty.</param>
public sealed record PadTyped(TouchPoint Point, string Name, string Role, string Side)
{
    /// <summary>Reads the line.</summary>
    public static Outcome<PadTyped> Read(string? text)
    {
        var words = (text ?? "").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 0) return TraceSentences.NoPad;
        var rest = words.Skip(1).ToList();
        var role = rest.FirstOrDefault(word => PadRoles.Words.Contains(word, StringComparer.OrdinalIgnoreCase)) ?? "";
        var side = rest.FirstOrDefault(word => word.ToLowerInvariant() is "top" or "bottom") ?? "";
        return new PadTyped(new(words[0]), string.Join(' ', rest.Where(word => word != role && word != side)), role.ToLowerInvariant(), side.ToLowerInvariant());
    }

    /// <summary>The line to store, lying where it was pointed at when <paramref name="picture"/> is not empty.</summary>
    public Line Line(string picture = "", double x = 0, double y = 0, string side = "")
    {
        var line = Working.Line.Of("pad").Set("pad", Point.Spot.Length > 0 ? Point.Pin : Point.Text).Set("spot", Point.Spot).Set("name", Name).Set("role", Role).Set("side", Side.Length > 0 ? Side : side);
        return picture.Length > 0 ? line.Set("picture", picture).Set("point", Math.Round(x, 1), Math.Round(y, 1)) : line;
    }

    /// <summary>A pad as it was typed, to be placed by a click.</summary>
    public static string Typed(PadSighting pad) =>
        string.Join(' ', new[] { Guard.NotNull(pad).Point.Text, pad.Name, pad.Role, pad.Side == PadSide.Unknown ? "" : pad.Side.ToString().ToLowerInvariant() }.Where(word => word.Length > 0));

    /// <summary>The next pad of a row: U3.14 behind U3.13, TP6 behind TP5; empty where the point does not end in a number.</summary>
    public string Next()
    {
        var text = Point.Text;
        var digits = text.Length;
        while (digits > 0 && char.IsAsciiDigit(text[digits - 1])) digits--;
        return digits < text.Length && int.TryParse(text.AsSpan(digits), NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number < 9_999
            ? text[..digits] + (number + 1).ToString(CultureInfo.InvariantCulture)
            : "";
    }
}
