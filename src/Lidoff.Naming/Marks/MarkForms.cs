using Lidoff.Catalogue.Parts;
using Lidoff.Numbers;

namespace Lidoff.Naming.Marks;

/// <summary>
/// The grammar of marks: what may stand on a part, from its name, its order codes and the patterns the catalogue knows. Shares are
/// judgements without a source: on a body with room most makers print the number without what follows it, or without the letters in
/// front; on the smallest bodies most print a short code. They are meant to be learnt from confirmed reads later.
/// </summary>
internal static class MarkForms
{
    /// <summary>Share of "nothing of the number" for parts with room, for small ones, and for parts whose pattern is known.</summary>
    internal const double UnknownRoomy = 0.12, UnknownSmall = 0.5, UnknownWithPattern = 0.06;

    internal static IEnumerable<MarkForm> Of(int index, Part part, bool small)
    {
        var known = part.Marks.Count > 0;
        var named = 1 - UnknownShare(part, small) - (known ? 0.5 : 0);
        var made = new Dictionary<string, MarkForm>(StringComparer.Ordinal);
        foreach (var pattern in part.Marks.OrderBy(m => m.Pattern, StringComparer.Ordinal))
        {
            // A recalled short code was wrong in half of a spot check (data notes), unless it is a piece of the name.
            var trust = pattern.Confidence == Confidence.Memory && !IsPieceOfName(pattern.Pattern, part) ? 0.5 : 1;
            foreach (var alternative in pattern.Pattern.Split('|')) AddPattern(made, index, alternative, 0.5 * trust / part.Marks.Count);
        }
        var name = Letters(part.Name);
        Add(made, index, MarkFormKind.Full, name, 0.45 * named);
        AddPieces(made, index, name, named);
        foreach (var order in part.OrderCodes) Add(made, index, MarkFormKind.OrderCode, Letters(Truncate(order)), 0.2 * named / part.OrderCodes.Count);
        return made.Values.OrderBy(f => f.Kind).ThenBy(f => Key(f.Glyphs), StringComparer.Ordinal);
    }

    /// <summary>How often nothing of a part's number stands on it.</summary>
    internal static double UnknownShare(Part part, bool small) => part.Marks.Count > 0 ? UnknownWithPattern : small ? UnknownSmall : UnknownRoomy;

    /// <summary>Upper-case letters and digits only.</summary>
    internal static string Letters(string text) => new([.. text.Select(Glyphs.Index).Where(g => g >= 0).Select(Glyphs.Char)]);

    private static void AddPieces(Dictionary<string, MarkForm> made, int index, string name, double named)
    {
        var digit = name.AsSpan().IndexOfAnyInRange('0', '9');
        if (digit < 0) return;
        var last = name.AsSpan().LastIndexOfAnyInRange('0', '9');
        if (digit >= 2) Add(made, index, MarkFormKind.PrefixDropped, name[0] + name[digit..], 0.08 * named);
        if (digit >= 1) Add(made, index, MarkFormKind.PrefixDropped, name[digit..], 0.1 * named);
        for (var letters = 1; letters <= Math.Min(2, digit - 1); letters++) Add(made, index, MarkFormKind.PrefixDropped, name[letters..], 0.04 * named);
        if (last < name.Length - 1)
        {
            Add(made, index, MarkFormKind.SuffixDropped, name[..(last + 1)], 0.1 * named);
            if (digit >= 1) Add(made, index, MarkFormKind.Middle, name[digit..(last + 1)], 0.03 * named);
        }
        if (name.Length > 8) Add(made, index, MarkFormKind.SuffixDropped, name[..8], 0.05 * named);
    }

    private static void AddPattern(Dictionary<string, MarkForm> made, int index, string pattern, double share)
    {
        var glyphs = new List<sbyte>();
        foreach (var c in pattern)
        {
            if (c == '?') glyphs.Add(MarkForm.One);
            else if (c == '*') glyphs.Add(MarkForm.Many);
            else if (c == '/') glyphs.Add(MarkForm.Line);
            else if (Glyphs.Index(c) is >= 0 and var g) glyphs.Add((sbyte)g);
        }
        // Wild ends carry no information; a reader may have left those lines out altogether.
        var open = false;
        while (glyphs.Count > 0 && glyphs[^1] >= MarkForm.One)
        {
            open |= glyphs[^1] != MarkForm.Line;
            glyphs.RemoveAt(glyphs.Count - 1);
        }
        var start = false;
        while (glyphs.Count > 0 && glyphs[0] is MarkForm.Many or MarkForm.Line)
        {
            start = true;
            glyphs.RemoveAt(0);
        }
        if (glyphs.Count == 0) return;
        Put(made, new MarkForm(index, MarkFormKind.Pattern, [.. glyphs], Elementary.Log(share), start, open));
        var line = glyphs.IndexOf(MarkForm.Line);
        if (line > 0 && glyphs.Take(line).Count(g => g < MarkForm.One) >= 3)
            Put(made, new MarkForm(index, MarkFormKind.Pattern, [.. glyphs.Take(line)], Elementary.Log(share * 0.3), start, true));
    }

    private static void Add(Dictionary<string, MarkForm> made, int index, MarkFormKind kind, string text, double share)
    {
        if (text.Length < 2 || share <= 0) return;
        Put(made, new MarkForm(index, kind, [.. text.Select(c => (sbyte)Glyphs.Index(c))], Elementary.Log(share), false, false));
    }

    private static void Put(Dictionary<string, MarkForm> made, MarkForm form)
    {
        var key = Key(form.Glyphs);
        if (!made.TryGetValue(key, out var had)) made[key] = form;
        else made[key] = had with { LogShare = Elementary.Log(Elementary.Exp(had.LogShare) + Elementary.Exp(form.LogShare)), OpenStart = had.OpenStart || form.OpenStart, OpenEnd = had.OpenEnd || form.OpenEnd };
    }

    private static string Key(sbyte[] glyphs) => new([.. glyphs.Select(g => (char)('0' + g))]);

    private static bool IsPieceOfName(string pattern, Part part)
    {
        var letters = Letters(pattern);
        return letters.Length >= 3 && (Letters(part.Name).Contains(letters, StringComparison.Ordinal) || part.OrderCodes.Any(o => Letters(o).Contains(letters, StringComparison.Ordinal)));
    }

    /// <summary>An order code up to its first placeholder: small x in a name stands for any letter (nRF52832-QFxx).</summary>
    private static string Truncate(string order)
    {
        var at = order.IndexOf("xx", StringComparison.Ordinal);
        return at > 0 ? order[..at] : order;
    }
}
