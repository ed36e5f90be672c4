using Lidoff.Numbers.Quantities;

namespace Lidoff.Numbers.Typed.Codes;

/// <summary>Reads a code on a passive part by every rule there is and leaves none out: 10R is 10 Ω, and 1.24 or 12.4 Ω.</summary>
public static class ComponentCodes
{
    private const int MostLetters = 4;

    /// <summary>All readings, resistors before capacitors before inductors before fuses; empty when no rule fits. Blanks at the ends are dropped.</summary>
    public static IReadOnlyList<CodeReading> Read(string? text)
    {
        var code = text?.Trim();
        return ResistorDigits.IsZeroOhm(code)
            ? ResistorDigits.Read(code)
            : [.. RkmCode.Read(code), .. ResistorDigits.Read(code), .. Eia96Code.Read(code), .. E24Code.Read(code), .. CapacitorCode.Read(code), .. RatedCapacitorCode.Read(code), .. InductorCode.Read(code), .. FuseCode.Read(code)];
    }

    /// <summary>
    /// All readings of a text whose capitals may have been small letters, as a machine reads it that knows no small ones: 3P3 is also 3p3. Those of the
    /// text as it stands come first, each reading once; at most four letters are tried both ways.
    /// </summary>
    public static IReadOnlyList<CodeReading> ReadAnyCase(string? text)
    {
        var code = text?.Trim() ?? "";
        var letters = Enumerable.Range(0, code.Length).Where(i => char.IsAsciiLetterUpper(code[i])).ToList();
        if (letters.Count > MostLetters) return Read(code);
        var seen = new HashSet<(double, Unit, string, double?)>();
        var readings = new List<CodeReading>();
        for (var small = 0; small < 1 << letters.Count; small++)
        {
            var tried = code.ToCharArray();
            for (var i = 0; i < letters.Count; i++) if ((small >> i & 1) == 1) tried[letters[i]] = char.ToLowerInvariant(tried[letters[i]]);
            readings.AddRange(Read(new string(tried)).Where(reading => seen.Add((reading.Si, reading.Unit, reading.Rule, reading.RatedVolts))));
        }

        return readings;
    }
}
