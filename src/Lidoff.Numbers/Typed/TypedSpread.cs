using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Quantities;

namespace Lidoff.Numbers.Typed;

/// <summary>A value with its doubt as somebody typed it, in SI.</summary>
/// <param name="Shape">Which of the four forms it was.</param>
/// <param name="Centre">The value, or the most likely one; the middle of a uniform range.</param>
/// <param name="U">Standard uncertainty of the normal form, zero or more; 0 for the others.</param>
/// <param name="Least">Lower end; the centre where there is none.</param>
/// <param name="Most">Upper end; the centre where there is none.</param>
/// <param name="Unit">The unit it was typed in, or that of the field.</param>
/// <param name="UnitTyped">Whether the unit was typed.</param>
/// <param name="Raw">What was typed.</param>
/// <param name="Remarks">What a person should know of how it was read; empty as a rule.</param>
public sealed record TypedSpread(
    SpreadShape Shape, double Centre, double U, double Least, double Most, Unit Unit, bool UnitTyped, string Raw, IReadOnlyList<string> Remarks)
{
    /// <summary>One unit of the last digit typed, in SI; 0 where that means nothing: for a range, or where a doubt was typed.</summary>
    public double LastDigit { get; init; }

    /// <summary>Whether it is one value, with or without a doubt, and no range.</summary>
    public bool IsValue => Shape is SpreadShape.Exact or SpreadShape.Normal;

    /// <summary>
    /// Reads <c>3.7</c>, <c>3.7±0.1</c>, <c>3.7 +/- 0.1 V</c>, <c>3.7 V ± 2 %</c>, <c>3.7(1)</c>, <c>3.5..4.2</c>, <c>3.5..3.7..4.2</c>.
    /// A bare number is in <paramref name="expected"/>; without one it is a pure number. A number whose decimal mark is certain
    /// settles the others of the same line.
    /// </summary>
    public static Outcome<TypedSpread> Read(string? text, Unit? expected, string where, DecimalMark mark = DecimalMark.Ask)
    {
        var cleaned = TypedText.Of(text, where);
        if (!cleaned.TryValue(out var typed)) return Outcome<TypedSpread>.Failed(cleaned.Faults);
        return new SpreadReader(typed, expected, where, mark).Read();
    }
}
