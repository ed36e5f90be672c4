using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Spreads;
using Lidoff.Numbers.Typed;

namespace Lidoff.Reckoning.Reckon;

/// <summary>Reads one typed value for one input and holds it to the input's range.</summary>
internal sealed class InputReader(IColumnSource columns)
{
    public Outcome<Uncertain> Read(CalculationInput input, string text)
    {
        var hash = text.LastIndexOf('#');
        return hash > 0 ? Empirical(input, text[..hash].Trim(), text[(hash + 1)..].Trim()) : Typed(input, text);
    }

    /// <summary>The value, or a fault when it lies outside the input's range.</summary>
    public static Outcome<Uncertain> InRange(CalculationInput input, Uncertain value, double least, double most) =>
        least >= input.Least && most <= input.Most ? value : ReckoningSentences.OutOfRange(input, least < input.Least ? least : most);

    // Two inputs from one column share a draw.
    private Outcome<Uncertain> Empirical(CalculationInput input, string file, string column) =>
        columns.Column(file, column, input.Key).Then(found =>
        {
            double[] si = [.. found.Select(input.Unit.ToSi)];
            return InRange(input, Uncertain.Empirical(si, file + '#' + column), si.Min(), si.Max());
        });

    private static Outcome<Uncertain> Typed(CalculationInput input, string text) =>
        TypedSpread.Read(WithoutOwnUnit(input, text), input.Unit, input.Key, DecimalMark.Machine)
            .Then(typed => InRange(input, UncertainText.Of(typed), typed.Least, typed.Most));

    // "2 %/month", "120 µgn/√Hz": units that only a calculation has are not known to the general reader.
    private static string WithoutOwnUnit(CalculationInput input, string text)
    {
        var trimmed = text.TrimEnd();
        return trimmed.EndsWith(input.Unit.Symbol, StringComparison.Ordinal) && !UnitReader.Read(input.Unit.Symbol, input.Key).Ok
            ? trimmed[..^input.Unit.Symbol.Length]
            : text;
    }
}
