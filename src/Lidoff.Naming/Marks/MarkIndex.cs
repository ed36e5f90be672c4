using System.Collections.Concurrent;
using Lidoff.Numbers;

namespace Lidoff.Naming.Marks;

/// <summary>
/// Finds the forms worth scoring: pairs of neighbouring glyphs, and pairs with one glyph between, look-alikes folded together, so that
/// one misread or unread glyph still leaves pairs on both sides. Forms too short to have two pairs are always scored.
/// </summary>
internal sealed class MarkIndex
{
    /// <summary>How many forms are scored exactly for one mark: enough for the largest family that shares a beginning.</summary>
    private const int Scored = 320;

    private const int FoldCount = 36 * 36;

    private readonly int[][] postings = new int[2 * FoldCount][];
    private readonly float[] weights = new float[2 * FoldCount];
    private readonly int[] alwaysScored;
    private readonly ConcurrentBag<float[]> scratch = [];

    internal MarkIndex(IReadOnlyList<MarkForm> forms)
    {
        Forms = forms;
        var lists = new List<int>[2 * FoldCount];
        var always = new List<int>();
        for (var f = 0; f < forms.Count; f++)
        {
            if (forms[f].Literals <= 2) always.Add(f);
            foreach (var key in Keys(forms[f].Glyphs).Distinct()) (lists[key] ??= []).Add(f);
        }
        alwaysScored = [.. always];
        for (var k = 0; k < lists.Length; k++)
        {
            postings[k] = lists[k]?.ToArray() ?? [];
            weights[k] = postings[k].Length == 0 ? 0 : (float)Elementary.Log((forms.Count + 1.0) / postings[k].Length);
        }
    }

    internal IReadOnlyList<MarkForm> Forms { get; }

    /// <summary>Numbers of the forms to score for <paramref name="query"/>, in rising order.</summary>
    internal int[] Candidates(MarkQuery query)
    {
        // Scratch comes back all zero: only what was touched is cleared.
        if (!scratch.TryTake(out var hits)) hits = new float[Forms.Count];
        var touched = new List<int>();
        foreach (var key in QueryKeys(query))
        {
            foreach (var form in postings[key])
            {
                if (hits[form] == 0) touched.Add(form);
                hits[form] += weights[key];
            }
        }
        // Long forms collect more hits than short ones that fit as well; their length is set against it. Sorting only what comes
        // near the best keeps this cheap.
        var ranks = touched.Select(f => (Form: f, Rank: hits[f] / (4 + Forms[f].Literals))).ToArray();
        var near = ranks.Length == 0 ? 0 : 0.3f * ranks.Max(r => r.Rank);
        var chosen = ranks.Where(r => r.Rank >= near).OrderByDescending(c => c.Rank).ThenBy(c => c.Form).Take(Scored).Select(c => c.Form);
        var result = chosen.Concat(alwaysScored).Distinct().Order().ToArray();
        foreach (var form in touched) hits[form] = 0;
        scratch.Add(hits);
        return result;
    }

    private static IEnumerable<int> Keys(sbyte[] glyphs)
    {
        var plain = glyphs.Where(g => g != MarkForm.Line).ToArray();
        for (var i = 0; i < plain.Length; i++)
        {
            if (plain[i] >= MarkForm.One) continue;
            if (i + 1 < plain.Length && plain[i + 1] < MarkForm.One) yield return Key(0, Fold(plain[i]), Fold(plain[i + 1]));
            if (i + 2 < plain.Length && plain[i + 2] < MarkForm.One && plain[i + 1] != MarkForm.Many) yield return Key(1, Fold(plain[i]), Fold(plain[i + 2]));
        }
    }

    private static SortedSet<int> QueryKeys(MarkQuery query)
    {
        var keys = new SortedSet<int>();
        var likely = Enumerable.Range(0, query.Length).Select(i => Likely(query, i)).ToArray();
        for (var i = 0; i < likely.Length; i++)
        {
            // A place where nothing may be printed is counted both ways: "nearest" is without it.
            for (int at = i + 1, nearest = 1; at < likely.Length && nearest <= 2; at++)
            {
                for (var step = nearest; step <= Math.Min(at - i, 2); step++)
                {
                    foreach (var a in likely[i])
                    {
                        foreach (var b in likely[at]) keys.Add(Key(step - 1, a, b));
                    }
                }

                if (!query.MayBeNothing(at)) nearest++;
            }
        }

        return keys;
    }

    /// <summary>Folded glyphs that are likelier than by chance at a place; none where it is unread.</summary>
    private static int[] Likely(MarkQuery query, int place) => query.Best[place] < 0 || query.Gap[place]
        ? []
        : [.. Enumerable.Range(0, Glyphs.Count).Where(g => query.Gains[place][g] > 0.5 || g == query.Best[place]).Select(g => Fold((sbyte)g)).Distinct().Order().Take(4)];

    private static int Key(int kind, int a, int b) => (kind * FoldCount) + (a * 36) + b;

    private static int Fold(sbyte glyph) => Glyphs.Char(glyph) switch
    {
        'O' or 'D' or 'Q' => 0,
        'I' or 'L' => 1,
        'S' => 5,
        'B' => 8,
        'G' => 6,
        'Z' => 2,
        'V' => Glyphs.Index('U'),
        'W' => Glyphs.Index('M'),
        _ => glyph,
    };
}
