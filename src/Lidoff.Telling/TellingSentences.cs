using System.Globalization;
using Lidoff.Numbers.Failing;

namespace Lidoff.Telling;

/// <summary>Every sentence the Tell room says about bad input.</summary>
public static class TellingSentences
{
    /// <summary>A brace that opens or closes nothing.</summary>
    public static Fault LoneBrace(int at) => new(
        "text",
        "every { closed by a }, and a brace meant as such doubled",
        string.Create(CultureInfo.InvariantCulture, $"The brace at character {at + 1} of the claim has no partner; double it ({{{{ or }}}}) if you mean the sign itself."));

    /// <summary>Braces around nothing.</summary>
    public static Fault EmptyReference(int at) => new(
        "text",
        "a reference between braces, such as {length:U1:long side}",
        string.Create(CultureInfo.InvariantCulture, $"The braces at character {at + 1} of the claim hold no reference; write one such as {{length:U1:long side}} or {{part:U1}}."));

    /// <summary>A folder that cannot be written to.</summary>
    public static Fault NoOutput(string folder, string reason) => new("--to", "a folder that can be written", $"{folder} cannot be written: {reason}");

    /// <summary>A form of report that this program does not write yet.</summary>
    public static Fault UnknownForm(string form) => new(
        "--as",
        "html, md or json",
        form is "pdf" or "vtt"
            ? $"The report cannot be written as {form} yet; html, md and json can."
            : $"The report cannot be written as '{form}'; html, md and json can.");
}
