using System.Globalization;
using Lidoff.Numbers.Calculating;
using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Quantities;
using Lidoff.Reckoning;
using Lidoff.Reckoning.Reckon;

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

    /// <summary>A caution or a fault whose names of inputs are read as words, as their fields have them: "self discharge 0 % a month".</summary>
    public static string Said(string sentence, CalculationInfo info) =>
        info.Inputs.Where(input => input.Key.Contains('_', StringComparison.Ordinal)).OrderByDescending(input => input.Key.Length).Aggregate(sentence, (said, input) => said.Replace(input.Key, Words(input.Key), StringComparison.Ordinal));

    /// <summary>Faults of a calculation whose inputs are named as their fields have them.</summary>
    public static IEnumerable<Fault> Said(IEnumerable<Fault> faults, string calculation) =>
        Reckoner.Find(calculation).TryValue(out var found) ? faults.Select(fault => fault with { Say = Said(fault.Say, found.Info) }) : faults;

    /// <summary>The name of a calculation as people read it.</summary>
    public static string Words(string name) => name.Replace('_', ' ');
}
