using System.Text;
using Lidoff.Bench.Typing;
using Lidoff.Bench.Working;
using Lidoff.Numbers.Failing;
using Lidoff.Telling.Claims;

namespace Lidoff.Bench.Rooms.Tell;

/// <summary>A claim as it was typed on one line: "C2: U1 is {part:U1}.", the name left out for a new one.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Text">Its sentence.</param>
public sealed record ClaimTyped(string Name, string Text)
{
    /// <summary>
    /// Reads a line; <paramref name="free"/> is the name of one that gives none. Broken braces, and braces that name nothing, are said
    /// here, before anything is stored; a short name that means one of <paramref name="known"/> is written out: {U1} is {part:U1}.
    /// </summary>
    public static Outcome<ClaimTyped> Read(string typed, string free, IReadOnlyList<string> known)
    {
        var text = typed.Trim();
        var name = free;
        var colon = text.IndexOf(':', StringComparison.Ordinal);
        if (colon is > 1 and < 8 && text[0] == 'C' && text[1..colon].All(char.IsAsciiDigit)) (name, text) = (text[..colon], text[(colon + 1)..].Trim());
        if (text.Length == 0) return TellSentences.Empty;
        return ClaimText.Parse(text).Then(parsed => Written(parsed, known)).Then(written => new ClaimTyped(name, written));
    }

    private static Outcome<string> Written(ClaimText parsed, IReadOnlyList<string> known)
    {
        var faults = new List<Fault>();
        var written = new StringBuilder();
        foreach (var piece in parsed.Pieces)
        {
            if (!piece.IsReference)
            {
                written.Append(piece.Text.Replace("{", "{{", StringComparison.Ordinal).Replace("}", "}}", StringComparison.Ordinal));
                continue;
            }

            var reference = ReferenceTyped.Read(piece.Text, known);
            faults.AddRange(reference.Faults);
            if (reference.TryValue(out var meant)) written.Append('{').Append(meant).Append('}');
        }

        return faults.Count > 0 ? Outcome<string>.Failed(faults) : written.ToString();
    }

    /// <summary>The line that stores it.</summary>
    public Line Line(bool why) => Working.Line.Of("claim").Set("claim", Name).Set("text", Text).Set("why", why ? true : (bool?)null);
}
