using System.Text.RegularExpressions;

namespace Lidoff.Bench.Rooms.Open.Typed;

/// <summary>A part of a typed step.</summary>
/// <param name="Sign">The sign that opened it; a blank for what is done, <see cref="Time"/> or <see cref="Mass"/>.</param>
/// <param name="Text">Its words without the sign.</param>
/// <param name="Raw">Its words as typed.</param>
internal sealed partial record StepWords(char Sign, string Text, string Raw)
{
    /// <summary>Sign of a time.</summary>
    public const char Time = 't';

    /// <summary>Sign of a mass.</summary>
    public const char Mass = '=';

    private const string Signs = "#@~!&?^";

    /// <summary>The parts in the order typed; what is done may be in several.</summary>
    public static IEnumerable<StepWords> Of(string? text)
    {
        var words = (text ?? "").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        StepWords? open = null;
        for (var i = 0; i < words.Length; i++)
        {
            var word = words[i];
            // "~110C for 5min" and "~110C, 5min" are how it was set; "~300C 4min" is how it was set, and how long it took.
            var inSetting = open?.Sign == '~' && i > 0 && (words[i - 1].EndsWith(',') || words[i - 1].Equals("for", StringComparison.OrdinalIgnoreCase));
            if (word.Length > 1 && Signs.Contains(word[0], StringComparison.Ordinal) && word[1] == word[0])
            {
                open = Onto(open, word[1..], word);
                continue;
            }

            // A lone & is an "and".
            var sign = Signs.Contains(word[0], StringComparison.Ordinal) && word != "&" ? word[0]
                : MassForm().IsMatch(word) ? Mass
                : !inSetting && TimeForm().IsMatch(word.TrimEnd(',')) ? Time
                : !inSetting && i + 1 < words.Length && char.IsAsciiDigit(word[^1]) && TimeForm().IsMatch(word + words[i + 1].TrimEnd(',')) ? 'T'
                : '\0';
            if (sign == '\0')
            {
                open = Onto(open, word, word);
                continue;
            }

            if (open is not null) yield return sign is Time or 'T' ? open.WithoutFor() : open;
            open = null;
            // An act is one word, and a time or a mass ends where it ends.
            if (sign == 'T') yield return new(Time, word + " " + words[++i].TrimEnd(','), word + " " + words[i]);
            else if (sign == Mass)
            {
                var whole = string.Join(' ', words[i..(i = MassEnd(words, i))]);
                i--;
                yield return new(sign, whole, whole);
            }
            else if (sign == Time) yield return new(sign, word.TrimEnd(','), word);
            else if (sign is '#' or '^') yield return new(sign, word[1..], word);
            else open = new(sign, word[1..], word);
        }

        if (open is not null) yield return open;
    }

    /// <summary>The place behind the mass that begins at <paramref name="at"/>: its unit and its doubt are words of their own in "B1=3.61 g ± 0.01".</summary>
    private static int MassEnd(string[] words, int at)
    {
        var next = BehindUnit(words, at + 1);
        if (next < words.Length && words[next].Length > 1 && words[next][0] == '±') return BehindUnit(words, next + 1);
        return next + 1 < words.Length && words[next] is "±" or "+-" or "+/-" && char.IsAsciiDigit(words[next + 1][0]) ? BehindUnit(words, next + 2) : next;
    }

    private static int BehindUnit(string[] words, int next) =>
        next < words.Length && char.IsAsciiDigit(words[next - 1][^1]) && words[next] is "g" or "mg" or "kg" ? next + 1 : next;

    private static StepWords Onto(StepWords? open, string text, string raw) =>
        open is null ? new(' ', text, raw) : open with { Text = (open.Text + " " + text).Trim(), Raw = open.Raw + " " + raw };

    // "heat it for 5 min": the word that led to the time goes with it.
    private StepWords WithoutFor() => Text.EndsWith(" for", StringComparison.OrdinalIgnoreCase) ? this with { Text = Text[..^4], Raw = Raw[..^4] } : this;

    // With a sign it is a time too, and refused as one, rather than passing for a word of the step.
    [GeneratedRegex(@"^[-\u2212+]?[0-9][0-9.,]*(min|h)$", RegexOptions.CultureInvariant)]
    private static partial Regex TimeForm();

    [GeneratedRegex(@"^[\p{L}0-9_-]{0,39}=[0-9.,].*$", RegexOptions.CultureInvariant)]
    private static partial Regex MassForm();
}
