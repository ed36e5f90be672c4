using System.Globalization;
using Lidoff.Bench.Showing;
using Lidoff.Seeing.Kinds;

namespace Lidoff.Bench.Rooms.See.Typed;

/// <summary>Letters and numbers of spots: which one comes next, and what sort of thing words speak of.</summary>
internal static class SpotLetters
{
    // Where a phrase stops saying what a thing is and begins to say where.
    private static readonly HashSet<string> Turns = new(
        ["beside", "near", "under", "at", "on", "for", "of", "with", "from", "to", "in", "by", "between", "behind", "above", "below", "over", "around", "inside", "next", "that", "which", "and", "or"], StringComparer.OrdinalIgnoreCase);

    // What people call things, and the class each is offered as. Common words of the trade, no source.
    private static readonly Dictionary<string, string> Habits = new(StringComparer.OrdinalIgnoreCase)
    {
        ["ic"] = "chip", ["microcontroller"] = "chip", ["processor"] = "chip", ["radio"] = "chip", ["regulator"] = "chip", ["charger"] = "chip", ["converter"] = "chip", ["memory"] = "chip",
        ["flash"] = "chip", ["driver"] = "chip", ["clock"] = "chip", ["battery"] = "cell", ["resonator"] = "crystal", ["oscillator"] = "crystal", ["lamp"] = "led", ["contact"] = "connector", ["socket"] = "connector",
        ["lid"] = "housing", ["case"] = "housing", ["shell"] = "housing", ["buzzer"] = "speaker", ["switch"] = "button", ["ferrite"] = "inductor", ["bead"] = "glue", ["adhesive"] = "glue", ["gasket"] = "seal",
        ["weld"] = "seam", ["wire"] = "cable", ["pad"] = "test pad", ["screen"] = "display", ["can"] = "shield", ["lens"] = "window", ["accelerometer"] = "sensor",
    };

    /// <summary>The designator a word is, in capitals ("u3" is U3); null when it is none: one to three letters and one to four digits.</summary>
    public static string? Designator(string word)
    {
        var letters = word.TakeWhile(char.IsAsciiLetter).Count();
        var digits = word.Length - letters;
        return letters is >= 1 and <= 3 && digits is >= 1 and <= 4 && word.AsSpan(letters).IndexOfAnyExceptInRange('0', '9') < 0 && word[letters] != '0' ? word.ToUpperInvariant() : null;
    }

    /// <summary>True for letters that begin designators. A and E also begin sentences: with them the number is typed too.</summary>
    public static bool Stands(string word) => word is not ("A" or "I") && SpotClasses.All.Any(each => each.Letters == word);

    /// <summary>The first free designator with these letters.</summary>
    public static string Next(string letters, IReadOnlyCollection<string> taken) => FreeName.Of(letters, taken);

    /// <summary>The letters of a designator or of a class; U where nothing says.</summary>
    public static string Of(string kind) => SpotClasses.Find(kind)?.Letters ?? "U";

    /// <summary>The class that words speak of: the last word before they turn to where it lies ("chip antenna at the edge"), or the first before a number ("crystal 32 MHz"); empty where none is known.</summary>
    public static string ClassOf(string words)
    {
        // "crystal, slow clock": what stands before the first comma is the thing, if it is one.
        if (words.IndexOf(',', StringComparison.Ordinal) is > 0 and var comma && ClassOf(words[..comma]) is { Length: > 0 } head) return head;
        var said = words.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).TakeWhile(word => !Turns.Contains(word)).ToList();
        if (said.Count == 0) return "";
        if (said.Count > 1 && Find(said[^2] + " " + said[^1]) is { } two) return two;
        if (Find(said[^1]) is { } one) return one;
        return said.Count > 1 && said[1].Any(char.IsAsciiDigit) && Find(said[0]) is { } first ? first : "";
    }

    private static string? Find(string word)
    {
        var plain = word.ToLowerInvariant();
        var single = plain.EndsWith('s') ? plain[..^1] : plain;
        foreach (var each in new[] { plain, single })
        {
            if (SpotClasses.Find(each) is { } found) return found.Word;
            if (Habits.TryGetValue(each, out var habit)) return habit;
        }

        return null;
    }
}
