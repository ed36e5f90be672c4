using System.Text.RegularExpressions;
using Lidoff.Bench.Typing;
using Lidoff.Bench.Working;
using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Quantities;
using Lidoff.Numbers.Typed;

namespace Lidoff.Bench.Rooms.Trace.Typed;

/// <summary>
/// A touch as it is typed: two points and a reading, <c>U3.13 GND beep</c>, <c>U2.4 VSYS 0.3</c>, <c>C4.1 GND open</c>, <c>U1.3 GND 1.8V</c>,
/// <c>R4.1 R4.2 2k2 ± 1 %</c>. One point keeps the second of the pair before it, but for volts, which are read against ground; none keeps both. A rail's name such as 3V3 behind one point is asked about.
/// </summary>
/// <param name="A">One point.</param>
/// <param name="B">The other; the black lead for volts.</param>
/// <param name="Beep">Whether it beeped; null when that was not said.</param>
/// <param name="ThresholdOhm">Below how many ohms the meter beeps; null when not typed.</param>
/// <param name="Ohms">Resistance, Ω.</param>
/// <param name="UOhm">Its standard uncertainty, Ω.</param>
/// <param name="Volts">Voltage, V.</param>
/// <param name="UV">Its standard uncertainty, V.</param>
/// <param name="Open">True when the meter showed an open circuit.</param>
public sealed partial record TouchTyped(
    string A, string B, bool? Beep = null, double? ThresholdOhm = null, double? Ohms = null, double? UOhm = null, double? Volts = null, double? UV = null, bool Open = false)
{
    private const string Ground = "GND";

    private static readonly string[] Between = ["-", "–", "—", "to", "and"];

    private static readonly string[] ReadingWords = ["beep", "beeps", "nobeep", "no", "silent", "open", "ol", "inf", "yes"];

    /// <summary>Reads the line. <paramref name="held"/> is the pair before it; null where there is none.</summary>
    public static Outcome<TouchTyped> Read(string? text, TouchPair? held = null, MeterMode mode = MeterMode.Ohms, DecimalMark mark = DecimalMark.Ask)
    {
        var words = (text ?? "").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).ToList();
        if (words.Count == 0) return TraceSentences.NoTouch;
        // "U3.13 – GND": the dash leads nowhere. Further on it could be a minus.
        if (words.Count > 2 && Between.Contains(words[1], StringComparer.OrdinalIgnoreCase)) words.RemoveAt(1);
        Outcome<TouchTyped>? first = null;
        for (var points = Math.Min(2, words.Count - 1); points >= 0; points--)
        {
            if (!words.Take(points).All(CouldBePoint)) continue;
            var rest = string.Join(' ', words.Skip(points));
            if (points == 1 && RailName().IsMatch(rest)) return TraceSentences.RailOrReading(rest);
            var reading = Reading(rest, mode, mark);
            first ??= reading;
            if (!reading.TryValue(out var read)) continue;
            var (a, b) = points switch { 2 => (words[0], words[1]), 1 => (words[0], read.Volts is null ? held?.B : Ground), _ => (held?.A, held?.B) };
            if (a is null || b is null) return TraceSentences.NoPair(points);
            return read with { A = a, B = b };
        }

        // The reading said first, as one calls it out: "beep U1.1 GND".
        if (words.Count > 2 && words.TakeLast(2).All(CouldBePoint) && Reading(string.Join(' ', words.SkipLast(2)), mode, mark).TryValue(out var called))
        {
            return called with { A = words[^2], B = words[^1] };
        }

        return words.Count <= 2 && words.All(CouldBePoint) ? TraceSentences.NoReading(words) : first ?? TraceSentences.NoReading(words);
    }

    /// <summary>The line to store.</summary>
    public Line Line() => Working.Line.Of("touch").Set("a", A).Set("b", B).Set("beep", Beep).Set("threshold_ohm", ThresholdOhm).Set("ohms", Ohms).Set("u_ohm", UOhm)
        .Set("volts", Volts).Set("u_v", UV).Set("open", Open ? true : null);

    /// <summary>What it was, in a few words: "U3.13 – GND beep".</summary>
    public string Says => $"{A} – {B}";

    private static Outcome<TouchTyped> Reading(string text, MeterMode mode, DecimalMark mark)
    {
        var none = new TouchTyped("", "");
        var lower = text.ToLowerInvariant();
        if (lower is "open" or "ol" or "o.l" or "o.l." or "0l" or "inf" or "∞") return none with { Open = true };
        if (lower is "no beep" or "nobeep" or "silent" or "no") return none with { Beep = false };
        if (lower is "beep" or "beeps" or "yes") return none with { Beep = true };
        if (BeepBelow().Match(lower) is { Success: true } below)
        {
            return TypedQuantity.Read(below.Groups[2].Value, Units.Ohm, "threshold", mark).Then(ohm => none with { Beep = below.Groups[1].Length == 0, ThresholdOhm = ohm.Quantity.Si });
        }

        if (lower.StartsWith("beep ", StringComparison.Ordinal)) return Number(text[5..], MeterMode.Ohms, mark).Then(with => with with { Beep = true });
        return Number(text, mode, mark);
    }

    private static Outcome<TouchTyped> Number(string text, MeterMode mode, DecimalMark mark)
    {
        // In the field's own unit first, so that 2.2 k and 100 m are asked about as ohms are; then in whatever unit was typed.
        text = DirectVolts().Replace(text, "V");
        var unit = mode == MeterMode.Volts ? Units.Volt : Units.Ohm;
        var read = TypedSpread.Read(text, unit, "reading", mark);
        if (!read.Ok && TypedSpread.Read(text, null, "reading", mark) is { Ok: true } other && other.Value.Unit.Dimension != Dimension.None) read = other;
        if (!read.TryValue(out var typed)) return Outcome<TouchTyped>.Failed(read.Faults);
        var value = TypedValue.Of(typed, typed.Unit.Dimension == Units.Volt.Dimension ? Units.Volt : Units.Ohm, TraceSentences.ReadingIsNoRange);
        if (!value.TryValue(out var shown)) return Outcome<TouchTyped>.Failed(value.Faults);
        if (mode == MeterMode.Ask && !typed.UnitTyped && !text.Any(char.IsLetter)) return TraceSentences.OhmsOrVolts(text);
        if (typed.Unit.Dimension == Units.Volt.Dimension) return new TouchTyped("", "", Volts: shown.Value, UV: shown.U);
        return typed.Unit.Dimension == Units.Ohm.Dimension ? new TouchTyped("", "", Ohms: shown.Value, UOhm: shown.U) : TraceSentences.NeitherOhmsNorVolts(text);
    }

    private static bool CouldBePoint(string word) => word.Any(char.IsLetter) && !ReadingWords.Contains(word, StringComparer.OrdinalIgnoreCase);

    // 3V3 or 5V: a rail's name on most boards.
    [GeneratedRegex(@"^[+-]?[0-9]+V[0-9]*$", RegexOptions.CultureInvariant)]
    private static partial Regex RailName();

    // A meter on its DC range, as it is read off.
    [GeneratedRegex(@"V\s?DC$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex DirectVolts();

    [GeneratedRegex(@"^(no\s?)?beeps?\s?<\s?(\S.*)$", RegexOptions.CultureInvariant)]
    private static partial Regex BeepBelow();
}
