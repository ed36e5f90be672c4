namespace Lidoff.Numbers.Typed.Codes;

/// <summary>Reads a code on a passive part by every rule there is and leaves none out: 10R is 10 Ω, and 1.24 or 12.4 Ω.</summary>
public static class ComponentCodes
{
    /// <summary>All readings, resistors before capacitors; empty when no rule fits. Blanks at the ends are dropped.</summary>
    public static IReadOnlyList<CodeReading> Read(string? text)
    {
        var code = text?.Trim();
        return ResistorDigits.IsZeroOhm(code)
            ? ResistorDigits.Read(code)
            : [.. RkmCode.Read(code), .. ResistorDigits.Read(code), .. Eia96Code.Read(code), .. CapacitorCode.Read(code)];
    }
}
