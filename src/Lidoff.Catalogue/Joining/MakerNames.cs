using System.Text.RegularExpressions;

namespace Lidoff.Catalogue.Joining;

/// <summary>Tells whether two maker entries can mean one maker: "Maxim (Analog Devices)" and "Analog Devices (Maxim)" can.</summary>
public static partial class MakerNames
{
    private static readonly HashSet<string> Vague = new(StringComparer.OrdinalIgnoreCase)
    {
        "various", "multiple", "many", "others", "generic", "and clones", "pro-electron codes", "china", "unknown",
    };

    /// <summary>True when they share a name, or when one names nobody in particular.</summary>
    public static bool Agree(string one, string other)
    {
        var left = Names(one);
        var right = Names(other);
        return left.Count == 0 || right.Count == 0 || left.Overlaps(right);
    }

    /// <summary>The single names of an entry, without the words that name nobody.</summary>
    public static IReadOnlySet<string> Names(string entry)
    {
        var names = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var piece in Separators().Split(entry))
        {
            var name = piece.Trim();
            if (name.Length > 0 && !Vague.Contains(name)) names.Add(name);
        }

        return names;
    }

    [GeneratedRegex(@"[/(),]| and (?=many)", RegexOptions.CultureInvariant)]
    private static partial Regex Separators();
}
