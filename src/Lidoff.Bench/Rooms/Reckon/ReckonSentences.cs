using System.Globalization;
using Lidoff.Numbers.Failing;

namespace Lidoff.Bench.Rooms.Reckon;

/// <summary>What the room Reckon says.</summary>
public static class ReckonSentences
{
    /// <summary>Under a question that is not on the board.</summary>
    public const string NotAsked = "Not on the board: it heads the number. Asked above (Q), it offers to be tied to it.";

    /// <summary>No number yet.</summary>
    public const string NoNumbers = "No number yet. Choose a calculation below and give its inputs: typed, or by reference to what was measured.";

    /// <summary>What a search of the calculations found.</summary>
    public static string Found(string typed, int shown, int found, bool everyWord) =>
        typed.Trim().Length == 0 ? string.Create(CultureInfo.InvariantCulture, $"{shown} of {found}, by name. Type what you want to know, in your own words.")
        : found == 0 ? $"No calculation for {Showing.Shown.Quoted(typed.Trim())} yet. Try another word, such as runtime, charge, bend, divider or antenna."
        : (everyWord ? "" : "No calculation holds every word; these hold some. ") + (shown < found ? string.Create(CultureInfo.InvariantCulture, $"{shown} of {found}. ") : "") + "Enter takes the first.";

    /// <summary>How inputs are typed.</summary>
    public const string InputHint = "A value with its doubt, such as 122 mAh ± 6, or a reference, such as length:U1:long side, body:U1:width, mass:U1, state:idle or R2. What is left empty takes its usual value where there is one.";

    /// <summary>What would make a number better known.</summary>
    public static string Improve(string input, double share, bool reference) => reference
        ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{input} makes {share * 100:0} % of the doubt: measure that once more, by another instrument or in another picture, and the two lines count together.")
        : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{input} makes {share * 100:0} % of the doubt, and it is typed: bind it to a measurement, or type it with a smaller doubt that you can stand for.");

    /// <summary>A number without doubt.</summary>
    public const string NoDoubt = "None of its inputs carries a doubt, so the number carries none either; that is rarely true. Type a ± behind the input that is known least.";
}
