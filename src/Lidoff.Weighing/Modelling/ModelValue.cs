using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Grading;
using Lidoff.Numbers.Quantities;
using Lidoff.Numbers.Spreads;

namespace Lidoff.Weighing.Modelling;

/// <summary>
/// What a reference stands for today: a number with its spread (SI, with the unit people read it in), or a name, or neither with
/// the sentence that says why. It knows every entry it rests on, the sentences to show beside it, and its grade.
/// </summary>
/// <param name="Reference">The reference as written.</param>
/// <param name="Says">What it is, in words ("long side of U1").</param>
/// <param name="Number">The number, SI; null where it is a name or missing.</param>
/// <param name="Low">Lower end of the 90 % interval, SI.</param>
/// <param name="High">Upper end of the 90 % interval, SI.</param>
/// <param name="Unit">The unit people read it in.</param>
/// <param name="Name">The name, where it is one ("nRF52832", "family nRF52", "not in any list").</param>
/// <param name="Probability">How likely the name is; null for numbers.</param>
/// <param name="Grade">How well it is known.</param>
/// <param name="RestsOn">Entries it rests on, in id order.</param>
/// <param name="Because">Sentences of how it came about, in order.</param>
/// <param name="Source">The published source of the formula, empty where there is none.</param>
/// <param name="Missing">Why there is no value; null when there is one.</param>
public sealed record ModelValue(
    string Reference,
    string Says,
    Uncertain? Number,
    double Low,
    double High,
    Unit Unit,
    string? Name,
    double? Probability,
    Grade Grade,
    ValueList<EntryId> RestsOn,
    ValueList<string> Because,
    string Source,
    string? Missing)
{
    /// <summary>Whose word it is where that is no person's, in a few words ("read by the machine"); empty otherwise.</summary>
    public string By { get; init; } = "";

    /// <summary>A reference that leads nowhere, with the sentence that says why.</summary>
    public static ModelValue Lost(string reference, string why) => Lost(reference, reference, why);

    /// <summary>The same for a reference whose meaning is plain: <paramref name="says"/> is what it would have been, in words.</summary>
    public static ModelValue Lost(string reference, string says, string why) =>
        new(reference, says, null, double.NaN, double.NaN, Units.One, null, null, Grade.E0, [], [], "", why);

    /// <summary>A number. <paramref name="low"/> and <paramref name="high"/> are its 90 % interval.</summary>
    public static ModelValue Of(string reference, string says, Uncertain number, double low, double high, Unit unit, Grade grade, IEnumerable<EntryId> restsOn, IEnumerable<string> because, string source = "") =>
        new(reference, says, number, low, high, unit, null, null, grade, [.. restsOn.Distinct().Order()], [.. because], source, null);
}
