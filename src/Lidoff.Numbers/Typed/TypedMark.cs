using Lidoff.Numbers.Failing;

namespace Lidoff.Numbers.Typed;

/// <summary>
/// One line of a mark as somebody typed it: <c>?</c> stands for one character that cannot be read, <c>*</c> for any number of them.
/// </summary>
/// <param name="Raw">What was typed, kept as it is.</param>
/// <param name="Folded">For search: capitals, plain digits, look-alike letters of other alphabets as ASCII; µ stays µ.</param>
/// <param name="Key">The folded form with every character replaced by the first of its look-alikes (0ODQ, 1IL, 5S …).</param>
/// <param name="Unreadable">How many places are <c>?</c>.</param>
/// <param name="Remarks">Letters of other alphabets that were taken for Latin ones, hidden characters; empty as a rule.</param>
public sealed record TypedMark(string Raw, string Folded, string Key, int Unreadable, IReadOnlyList<string> Remarks)
{
    /// <summary>Longest line of a mark; no package carries more.</summary>
    public const int Longest = 80;

    /// <summary>Reads one line of a mark. Control characters and line ends are refused, anything else is kept.</summary>
    public static Outcome<TypedMark> Read(string? text, string where)
    {
        if (string.IsNullOrWhiteSpace(text)) return TypedSentences.EmptyMark(where);
        if (text.Length > Longest) return TypedSentences.TooLong(where, text.Length, Longest);
        if (text.Any(char.IsControl)) return TypedSentences.ControlCharacter(where, text.First(char.IsControl));
        var folded = MarkFolding.Fold(text);
        if (folded.Length == 0) return TypedSentences.EmptyMark(where);
        var remarks = new List<string>();
        var foreign = text.Where(c => LookAlikes.Latin(c) is not null).ToList();
        if (foreign.Count > 0) remarks.Add(TypedSentences.LookAlikeLetters(foreign));
        var invisible = text.Count(LookAlikes.IsInvisible);
        if (invisible > 0) remarks.Add(TypedSentences.InvisibleDropped(invisible));
        return new TypedMark(text, folded, MarkFolding.Key(folded), folded.Count(c => c == '?'), remarks);
    }
}
