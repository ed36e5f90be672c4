using System.Globalization;
using Lidoff.Bench.Working;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Bench.Rooms.See.Typed;

/// <summary>
/// A mark as it is typed on one line: <c>N52832/QFAA?0</c>, with <c>/</c> between lines, <c>?</c> or a blank for an unread place,
/// <c>*</c> for any number of them, <c>8|B</c> for a place that may be either, and <c>8|_</c> for one where
/// maybe nothing is printed; <c>_</c> alone is an unread place of that sort. A doubled sign is the sign itself.
/// </summary>
/// <param name="Lines">
/// Per line its places, each with what may stand there in the order typed, the empty text for nothing; no alternative at all for an
/// unread one.
/// </param>
public sealed record MarkTyped(ValueList<ValueList<ValueList<string>>> Lines)
{
    /// <summary>Share of a place with alternatives that is left for every other character. A choice of ours: an eye that wavers between two is now and then wrong about both.</summary>
    public const double Rest = 0.05;

    /// <summary>Share of "nothing" at a place of which no character was read: as likely as not.</summary>
    public const double NothingAlone = 0.5;

    /// <summary>What stands in a place when it is any number of characters.</summary>
    private const string Star = "*";

    /// <summary>Reads the line.</summary>
    public static Outcome<MarkTyped> Read(string? text)
    {
        var lines = new List<List<List<string>>> { new() };
        var joins = false;
        var characters = Characters((text ?? "").TrimEnd(' '));
        for (var i = 0; i < characters.Count; i++)
        {
            var one = characters[i];
            var doubled = one is "/" or "|" or "?" or "_" && i + 1 < characters.Count && characters[i + 1] == one;
            // Two unread places side by side are common, two question marks in print are not.
            if (doubled && one == "?") doubled = false;
            if (doubled) i++;
            if (one == "|" && !doubled)
            {
                if (lines[^1].Count == 0 || joins) return SeeSentences.LoneBar;
                joins = true;
                continue;
            }

            if (one == "/" && !doubled)
            {
                if (joins) return SeeSentences.LoneBar;
                lines.Add([]);
                continue;
            }

            if (one == "_" && !doubled) one = "";
            List<string> place = one is "?" or " " ? [] : [one];
            if (!joins) lines[^1].Add(place);
            // The same twice says nothing more, and an unread place is open to all anyway.
            else if (place.Count > 0 && !lines[^1][^1].Contains(one)) lines[^1][^1].Add(one);
            joins = false;
        }

        if (joins) return SeeSentences.LoneBar;
        lines.RemoveAll(line => line.Count == 0);
        if (lines.Count == 0) return SeeSentences.MarkMissing;
        if (lines.Any(line => Open(line) && line.Any(place => place is [Star]))) return SeeSentences.StarAmongAlternatives;
        return new MarkTyped([.. lines.Select(line => (ValueList<ValueList<string>>)[.. line.Select(place => (ValueList<string>)[.. place])])]);
    }

    /// <summary>
    /// What each of several alternatives gets, in the order typed: equal shares, or each next one half of the one before. Together
    /// <c>1 − Rest</c>.
    /// </summary>
    public static IReadOnlyList<double> Shares(IReadOnlyList<string> place, bool byOrder)
    {
        if (place is [""]) return [NothingAlone];
        var weights = Enumerable.Range(0, place.Count).Select(at => byOrder ? 1.0 / (1L << Math.Min(at, 40)) : 1.0).ToList();
        return [.. weights.Select(weight => Math.Round((1 - Rest) * weight / weights.Sum(), 4))];
    }

    /// <summary>The line to store.</summary>
    public Line Line(string spot, string specimen, bool byOrder) => Working.Line.Of("mark").Set("specimen", specimen).Set("spot", spot).With("lines", json =>
    {
        json.WriteStartArray();
        foreach (var line in Lines)
        {
            if (!Open(line))
            {
                json.WriteStringValue(string.Concat(line.Select(place => place.Count == 0 ? "?" : place[0])));
                continue;
            }

            json.WriteStartArray();
            foreach (var place in line)
            {
                var shares = Shares(place, byOrder);
                json.WriteStartArray();
                for (var i = 0; i < place.Count; i++)
                {
                    json.WriteStartArray();
                    json.WriteStringValue(place[i]);
                    json.WriteNumberValue(shares[i]);
                    json.WriteEndArray();
                }

                json.WriteEndArray();
            }

            json.WriteEndArray();
        }

        json.WriteEndArray();
    });

    private static bool Open(IEnumerable<IReadOnlyList<string>> line) => line.Any(place => place.Count > 1 || place.Contains(""));

    private static List<string> Characters(string text)
    {
        var all = new List<string>();
        var each = StringInfo.GetTextElementEnumerator(text);
        while (each.MoveNext()) all.Add(each.GetTextElement());
        return all;
    }
}
