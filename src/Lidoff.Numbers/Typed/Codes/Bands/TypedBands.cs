using Lidoff.Numbers.Failing;

namespace Lidoff.Numbers.Typed.Codes.Bands;

/// <summary>
/// Colour bands as people type them: names or the two letters of IEC 60757 (BK BN RD OG YE GN BU VT GY WH PK SR GD), with blanks, commas or dashes
/// between; <c>red|orange</c> for either and <c>?</c> for one that cannot be told. Two-letter codes may stand without anything between.
/// </summary>
public static class TypedBands
{
    private const int LongestText = 200;

    // More of them open say nothing any more.
    private const int MostOpen = 3;

    private static readonly Dictionary<string, BandColour> Names = new(StringComparer.OrdinalIgnoreCase)
    {
        ["black"] = BandColour.Black, ["brown"] = BandColour.Brown, ["red"] = BandColour.Red, ["orange"] = BandColour.Orange, ["yellow"] = BandColour.Yellow, ["green"] = BandColour.Green,
        ["blue"] = BandColour.Blue, ["violet"] = BandColour.Violet, ["purple"] = BandColour.Violet, ["grey"] = BandColour.Grey, ["gray"] = BandColour.Grey, ["white"] = BandColour.White,
        ["gold"] = BandColour.Gold, ["silver"] = BandColour.Silver, ["pink"] = BandColour.Pink,
        ["bk"] = BandColour.Black, ["bn"] = BandColour.Brown, ["rd"] = BandColour.Red, ["og"] = BandColour.Orange, ["ye"] = BandColour.Yellow, ["gn"] = BandColour.Green,
        ["bu"] = BandColour.Blue, ["vt"] = BandColour.Violet, ["gy"] = BandColour.Grey, ["wh"] = BandColour.White, ["gd"] = BandColour.Gold, ["sr"] = BandColour.Silver, ["pk"] = BandColour.Pink,
    };

    /// <summary>The name of a colour as it is written.</summary>
    public static string Name(BandColour colour) => colour.ToString().ToLowerInvariant();

    /// <summary>The colour of a name or of two letters; null where it is none.</summary>
    public static BandColour? ColourOf(string name) => Names.TryGetValue(name, out var colour) ? colour : null;

    /// <summary>True where a text is meant as bands: its first word names a colour.</summary>
    public static bool Looks(string? text) => text is { Length: <= LongestText } && Words(text) is { Count: > 0 } words && words[0].Split('|').All(Names.ContainsKey);

    /// <summary>The bands; a fault names the word that is no colour, or says how many bands there are.</summary>
    public static Outcome<IReadOnlyList<BandShares>> Read(string? text)
    {
        var words = text is { Length: <= LongestText } ? Words(text) : [];
        if (words.Count is 0 or > BandOdds.Most) return TypedSentences.BandsCount(words.Count, BandOdds.Most);
        if (words.Count(word => word == "?") is > MostOpen and var open) return TypedSentences.BandsOpen(open, MostOpen);
        var bands = new List<BandShares>();
        var faults = new List<Fault>();
        foreach (var word in words)
        {
            var colours = word == "?" ? [.. BandTable.All] : word.Split('|').Select(each => Names.TryGetValue(each, out var colour) ? colour : (BandColour?)null).ToList();
            if (colours.Contains(null)) faults.Add(TypedSentences.NoColour(word));
            else bands.Add(BandShares.Of([.. colours.Select(colour => colour!.Value)]));
        }

        return faults.Count > 0 ? Outcome<IReadOnlyList<BandShares>>.Failed(faults) : bands;
    }

    private static List<string> Words(string text)
    {
        var words = text.Split([' ', ',', '-', '\t'], StringSplitOptions.RemoveEmptyEntries).ToList();
        // BNBKRDGD.
        if (words.Count == 1 && words[0].Length is >= 4 and <= 2 * BandOdds.Most && words[0].Length % 2 == 0 && words[0].Chunk(2).Select(pair => new string(pair)).ToList() is var pairs && pairs.TrueForAll(Names.ContainsKey)) return pairs;
        return words;
    }
}
