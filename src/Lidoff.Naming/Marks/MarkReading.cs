using System.Globalization;
using System.Text.Json;
using Lidoff.Naming.Asking;

namespace Lidoff.Naming.Marks;

/// <summary>Reads <c>mark_lines</c>: each line a text with <c>?</c> and <c>*</c>, or a list of places, each a list of [character, probability].</summary>
internal static class MarkReading
{
    private const string Expected = "a list of lines, each a text or a list of places like [[\"N\",0.9],[\"H\",0.1]]";

    internal static MarkLattice? Read(JsonElement value, EvidenceFields fields)
    {
        if (value.ValueKind != JsonValueKind.Array)
        {
            fields.Faults.Add(EvidenceSentences.Wrong("mark_lines", Expected));
            return null;
        }
        var lines = new List<IReadOnlyList<MarkPosition>>();
        foreach (var line in value.EnumerateArray())
        {
            var where = string.Create(CultureInfo.InvariantCulture, $"mark_lines[{lines.Count}]");
            lines.Add(line.ValueKind switch
            {
                JsonValueKind.String => Text(line.GetString()!, fields),
                JsonValueKind.Array => [.. line.EnumerateArray().Select((place, i) => Place(place, string.Create(CultureInfo.InvariantCulture, $"{where}[{i}]"), fields))],
                _ => Fault(where, fields),
            });
        }
        return new MarkLattice(lines);
    }

    private static IReadOnlyList<MarkPosition> Text(string text, EvidenceFields fields)
    {
        if (text.Any(Glyphs.IsHomoglyph)) fields.Remarks.Add(EvidenceSentences.OtherAlphabet(text));
        return MarkLattice.OfText(text).Lines[0];
    }

    private static IReadOnlyList<MarkPosition> Fault(string where, EvidenceFields fields)
    {
        fields.Faults.Add(EvidenceSentences.Wrong(where, Expected));
        return [];
    }

    private static MarkPosition Place(JsonElement place, string where, EvidenceFields fields)
    {
        const string expected = "a list of [character, probability] whose probabilities add up to 1 or less";
        var chances = new List<GlyphChance>();
        var (sum, nothing) = (0.0, 0.0);
        var good = place.ValueKind == JsonValueKind.Array;
        if (good)
        {
            foreach (var chance in place.EnumerateArray())
            {
                if (chance.ValueKind == JsonValueKind.Array && chance.GetArrayLength() == 2 && chance[0].ValueKind == JsonValueKind.String
                    && chance[0].GetString() is { Length: 0 or 1 } glyph && chance[1].ValueKind == JsonValueKind.Number
                    && chance[1].TryGetDouble(out var p) && p >= 0 && p <= 1)
                {
                    if (glyph.Length == 0) nothing += p;
                    else chances.Add(new(glyph[0], p));
                    sum += p;
                }
                else
                {
                    good = false;
                }
            }
        }
        // A hundredth of slack: readers round their probabilities.
        if (good && sum <= 1.01) return MarkPosition.Of(chances, nothing);
        fields.Faults.Add(EvidenceSentences.Wrong(where, expected));
        return MarkPosition.Unread;
    }
}
