using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Quantities;

namespace Lidoff.Numbers.Typed;

/// <summary>A number with its unit as somebody typed it.</summary>
/// <param name="Quantity">Value in SI and dimension.</param>
/// <param name="Unit">The unit it was typed in, or that of the field.</param>
/// <param name="UnitTyped">Whether the unit was typed.</param>
/// <param name="Raw">What was typed.</param>
/// <param name="Remarks">What a person should know of how it was read; empty as a rule.</param>
public sealed record TypedQuantity(Quantity Quantity, Unit Unit, bool UnitTyped, string Raw, IReadOnlyList<string> Remarks)
{
    /// <summary>
    /// Reads one value: <c>10 mil</c>, <c>2k2</c>, <c>4R7</c>, <c>0n5</c>, <c>3,7 V</c>. A bare number is in <paramref name="expected"/>;
    /// a unit of another dimension is a fault that names both. A value typed with an uncertainty or as a range is refused here.
    /// </summary>
    public static Outcome<TypedQuantity> Read(string? text, Unit? expected, string where, DecimalMark mark = DecimalMark.Ask) =>
        TypedSpread.Read(text, expected, where, mark).Then(spread => spread.Shape == SpreadShape.Exact
            ? new TypedQuantity(new Quantity(spread.Centre, spread.Unit.Dimension), spread.Unit, spread.UnitTyped, spread.Raw, spread.Remarks)
            : (Outcome<TypedQuantity>)TypedSentences.OneValueOnly(where, spread.Raw));

    /// <summary>
    /// Reads a standard uncertainty alone: <c>0.05</c>, <c>±0.05</c>, <c>±50 µm</c>; zero or more, in SI, without offset (±2 °C is 2 K).
    /// </summary>
    public static Outcome<double> ReadUncertainty(string? text, Unit expected, string where, DecimalMark mark = DecimalMark.Ask)
    {
        var cleaned = TypedText.Of(text, where);
        if (!cleaned.TryValue(out var typed)) return Outcome<double>.Failed(cleaned.Faults);
        return new SpreadReader(typed, expected, where, mark).Uncertainty();
    }
}
