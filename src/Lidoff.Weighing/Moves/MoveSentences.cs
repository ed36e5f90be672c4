using System.Globalization;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Weighing.Moves;

/// <summary>Every sentence of the next moves.</summary>
public static class MoveSentences
{
    /// <summary>Stands behind the reason where the gain is not a number yet.</summary>
    public const string NotReckoned = "How much it would tell is not reckoned yet.";

    /// <summary>The question of a spot that no question asks for.</summary>
    public static string WhatIs(string spot) => $"What is {spot}?";

    /// <summary>The question of a picture without a scale.</summary>
    public static string HowLarge(string picture) => $"How large is what lies in {picture}?";

    /// <summary>The question before a step that destroys something.</summary>
    public static string Before(string plan, string does) => $"What must be recorded before {plan}, {does}?";

    /// <summary>The question of a quarrel that touches no question.</summary>
    public static string Which(string rule) => $"Which of them is true ({rule})?";

    /// <summary>A measurement that the naming engine proposes.</summary>
    public static string Named(string spot, string measure) => $"{spot}: {measure}";

    /// <summary>Why it is proposed.</summary>
    public static string Tells(IdentityAnswer answer, double bits) => answer.Says == IdentityAnswer.Undecided
        ? Text($"The part at {answer.Spot} is undecided; this is expected to tell {bits:0.00} bits.")
        : Text($"The part at {answer.Spot} is {answer.Says}, {ValueText.Percent(answer.P)}; this is expected to tell {bits:0.00} bits.");

    /// <summary>Why a part is looked at once more where the naming engine proposes nothing.</summary>
    public static string NoneTells(IdentityAnswer answer) => answer.Says == IdentityAnswer.Undecided
        ? $"The part at {answer.Spot} is undecided, and no single measurement is expected to decide it."
        : Text($"The part at {answer.Spot} is {answer.Says}, {ValueText.Percent(answer.P)}, and no single measurement is expected to tell more.");

    /// <summary>A spot to look at closely.</summary>
    public static string LookAt(string spot) => $"look at {spot}: read its mark, measure its body, count its pins";

    /// <summary>A spot that is only named.</summary>
    public static string PointAt(string spot) => $"point at {spot} in a picture";

    /// <summary>Why.</summary>
    public static string Nowhere(string spot) => $"{spot} is spoken of and has no place in any picture.";

    /// <summary>A length.</summary>
    public static string Measure(string what, string spot, bool again) => again ? $"measure {what} of {spot} once more with a calliper" : $"measure {what} of {spot} with a calliper";

    /// <summary>A picture's scale.</summary>
    public static string SetScale(string picture) => $"set the scale of {picture}: two clicks and a known length";

    /// <summary>Why.</summary>
    public static string SpotsWithoutScale(string picture, int spots) => spots == 1
        ? $"One spot lies in {picture}, and nothing can be measured there."
        : Text($"{spots} spots lie in {picture}, and nothing can be measured there.");

    /// <summary>A mass.</summary>
    public static string Weigh(string spot, bool again) => again ? $"weigh {spot} once more, on a finer scale" : $"weigh {spot}";

    /// <summary>A mark.</summary>
    public static string ReadMark(string spot) => $"read the mark on {spot}";

    /// <summary>A reckoning nobody has noted.</summary>
    public static string Bind(string reckoning) => $"bind {reckoning}: choose its calculation and its inputs";

    /// <summary>An input without a value.</summary>
    public static string Give(string reckoning, string input) => $"{reckoning}: find {input}";

    /// <summary>An input that makes most of the doubt.</summary>
    public static string Improve(string reckoning, string input) => $"{reckoning}: measure {input.Replace('_', ' ')} better";

    /// <summary>An input that was left at its default.</summary>
    public static string Settle(string reckoning, string input) => $"{reckoning}: find {input} of this device; a default stands in";

    /// <summary>Why: the share of the doubt.</summary>
    public static string Share(string reckoning, double share, string interval) => Text($"It makes {share * 100:0} % of the doubt of {reckoning}, which lies in {interval}.");

    /// <summary>Why: a wide interval without parts.</summary>
    public static string Wide(string says, string interval) => $"{says} lies in {interval}, more than a tenth to either side.";

    /// <summary>A question without ties.</summary>
    public static string Tie(string question) => $"tie {question} to what would answer it: a number, a part, a claim";

    /// <summary>Why.</summary>
    public const string NoTie = "Nothing in the dossier answers it.";

    /// <summary>A claim that is not there.</summary>
    public static string Write(string claim) => $"write the claim {claim}";

    /// <summary>Something to record.</summary>
    public static string Record(string what) => $"record first: {what}";

    /// <summary>Why.</summary>
    public static string Destroys(string plan, string destroys) => $"{plan} destroys {destroys}.";

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
