using System.Globalization;
using Lidoff.Numbers.Calculating;
using Lidoff.Numbers.Quantities;
using Lidoff.Reckoning;

namespace Lidoff.Bench.Rooms.Reckon.Binding;

/// <summary>What is said beside the field of an input.</summary>
public static class InputWords
{
    /// <summary>"from 0.01 to 1000000 mAh; 0.9 if left empty".</summary>
    public static string Range(CalculationInput input)
    {
        var range = ReckoningSentences.Range(input);
        return input.Default is { } assumed ? $"{range}; {QuantityText.Value(assumed, input.Unit, keepUnit: true)} if left empty" : range;
    }

    /// <summary>True when a text refers to something of the dossier, so that it is bound and not typed.</summary>
    public static bool Refers(string text)
    {
        var trimmed = text.Trim();
        if (trimmed.Length > 1 && trimmed[0] == 'R' && trimmed[1..].All(char.IsAsciiDigit)) return true;
        return trimmed.Split(':', 2) is [var head, { Length: > 0 }] && head.All(c => char.IsAsciiLetterLower(c) || c == '_') && head.Length > 0;
    }

    /// <summary>A caution whose names of inputs are read as words: "self discharge 0 % a month".</summary>
    public static string Caution(string caution, CalculationInfo info) =>
        info.Inputs.Where(input => input.Key.Contains('_', StringComparison.Ordinal)).Aggregate(caution, (said, input) => said.Replace(input.Key, Words(input.Key), StringComparison.Ordinal));

    /// <summary>The name of a calculation as people read it.</summary>
    public static string Words(string name) => name.Replace('_', ' ');
}
