using Lidoff.Catalogue.Joining;
using Lidoff.Catalogue.Parts;

namespace Lidoff.Catalogue.Searching;

/// <summary>Stretches of three signs of all names, order codes and mark patterns, each with the parts that have it.</summary>
internal sealed class MarkGrams
{
    private const int Length = 3;

    // A pattern of so few fixed signs is a short code: it shares hardly a stretch, so it is matched whole.
    private const int ShortCode = 4;

    private readonly Dictionary<int, List<int>> postings = [];
    private readonly List<(string Pattern, int Part)> shortCodes = [];
    private readonly int parts;

    public MarkGrams(IReadOnlyList<Part> parts)
    {
        this.parts = parts.Count;
        for (var i = 0; i < parts.Count; i++)
        {
            Add(parts[i].Name, i);
            foreach (var code in parts[i].OrderCodes) Add(code, i);
            foreach (var mark in parts[i].Marks)
            {
                Add(mark.Pattern, i);
                var whole = LookAlikes.Of(PartFold.Of(mark.Pattern));
                if (whole.Count(c => c is not ('?' or '*' or '/')) <= ShortCode) shortCodes.Add((whole, i));
            }
        }
    }

    public IEnumerable<int> Find(IReadOnlyList<string> lines, int most)
    {
        var hits = new int[parts];
        foreach (var gram in lines.SelectMany(Grams).Distinct())
        {
            if (!postings.TryGetValue(gram, out var holders)) continue;
            foreach (var part in holders) hits[part]++;
        }

        var folded = lines.Select(l => LookAlikes.Of(PartFold.Of(l))).ToList();
        var whole = string.Join('/', folded);
        foreach (var (pattern, part) in shortCodes)
        {
            if (Wildcard.Covers(pattern, whole) || folded.Exists(line => Wildcard.Covers(pattern, line))) hits[part] += ShortCode;
        }

        return Enumerable.Range(0, parts).Where(i => hits[i] > 0).OrderByDescending(i => hits[i]).ThenBy(i => i).Take(most);
    }

    private static IEnumerable<int> Grams(string text)
    {
        foreach (var run in LookAlikes.Of(PartFold.Of(text)).Split(['?', '*', '/'], StringSplitOptions.RemoveEmptyEntries))
        {
            for (var i = 0; i + Length <= run.Length; i++) yield return ((run[i] & 0x3ff) << 20) | ((run[i + 1] & 0x3ff) << 10) | (run[i + 2] & 0x3ff);
        }
    }

    private void Add(string text, int part)
    {
        foreach (var gram in Grams(text))
        {
            if (!postings.TryGetValue(gram, out var holders)) postings.Add(gram, holders = []);
            if (holders.Count == 0 || holders[^1] != part) holders.Add(part);
        }
    }
}
