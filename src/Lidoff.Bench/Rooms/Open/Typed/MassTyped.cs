using Lidoff.Bench.Typing;
using Lidoff.Bench.Working;
using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Quantities;
using Lidoff.Numbers.Typed;

namespace Lidoff.Bench.Rooms.Open.Typed;

/// <summary>A mass as it is typed: <c>B1 3.61 g ± 0.01</c>, <c>whole 21.4 g</c>, or the number alone for the whole.</summary>
/// <param name="Spot">What was weighed; empty for the whole specimen.</param>
/// <param name="G">Mass, g.</param>
/// <param name="UG">Its standard uncertainty, g; null when none was typed.</param>
/// <param name="DigitG">One unit of the last digit typed, g: what a balance is trusted to where no doubt was typed (common practice, no source).</param>
public sealed record MassTyped(string Spot, double G, double? UG, double DigitG)
{
    /// <summary>Reads the line.</summary>
    public static Outcome<MassTyped> Read(string? text)
    {
        var line = (text ?? "").Trim();
        var at = line.IndexOf(' ', StringComparison.Ordinal);
        var begins = line.Length > 0 && (char.IsDigit(line[0]) || line[0] is '.' or ',' or '-' or '+');
        var spot = begins ? "" : at < 0 ? line : line[..at];
        var number = begins ? line : at < 0 ? "" : line[(at + 1)..].Trim();
        if (number.Length == 0) return OpenSentences.MassMissing(spot);
        return TypedSpread.Read(number, Units.Gram, "mass").Then(Grams).Then(mass => mass with { Spot = string.Equals(spot, "whole", StringComparison.OrdinalIgnoreCase) ? "" : spot });
    }

    /// <summary>A mass without a name: 23.4 g, 23.4 g ± 0.05.</summary>
    internal static Outcome<MassTyped> Grams(TypedSpread spread) =>
        TypedValue.Of(spread, Units.Gram, OpenSentences.MassIsNoRange).Then(grams => new MassTyped("", grams.Value, grams.U, TypedValue.Stored(spread.LastDigit, Units.Gram)));

    /// <summary>The line to store; <paramref name="step"/> is the id of the step at which it was weighed, empty where none is meant.</summary>
    public Line Line(string specimen, string step = "") => Working.Line.Of("mass").Set("specimen", specimen).Set("spot", Spot).Set("g", G).Set("u_g", UG ?? (DigitG > 0 ? DigitG : null)).Set("target", step);
}
