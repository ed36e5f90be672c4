namespace Lidoff.Naming.Marks;

/// <summary>
/// The best way to lay a form into a mark, by dynamic programming over (glyph of the form, place of the mark): a glyph may be another
/// than read, one may be missing or too many, a line may break inside; what stands before and after counts too, because a number that
/// goes on is another number.
/// </summary>
internal sealed class MarkAlignment
{
    // Natural logs; judgements without a source, set so that one misread glyph (about -3) costs much less than one glyph too many.
    private const double Extra = -7, Missing = -7, Broken = -1.6, PatternLineMissing = -0.7;
    private const double LaterLine = -0.7, LetterBefore = -3, DigitBefore = -5, LetterAfter = -0.6, DigitAfterDigit = -6, DigitAfterLetter = -3, UnreadBeside = -1;

    private double[] before = new double[64], now = new double[64];

    /// <summary>Digits behind this many glyphs are the ones by which siblings differ.</summary>
    private const int Stem = 3;

    /// <summary>Gain of a digit where any digit would do: one in ten against its share in marks at large.</summary>
    private const double AnyDigit = 0.8;

    /// <summary>Natural log of the likelihood ratio of the best lay, without the form's own share.</summary>
    internal double Lay(MarkForm form, MarkQuery query) => Best(form, query, sibling: false);

    /// <summary>
    /// The same for an unlisted sibling: the same beginning of three glyphs, other digits behind, all else alike. Minus infinity where
    /// the form has no such digits.
    /// </summary>
    internal double LaySibling(MarkForm form, MarkQuery query) =>
        Array.FindLastIndex(form.Glyphs, g => Glyphs.IsDigit(g)) >= Stem ? Best(form, query, sibling: true) : double.NegativeInfinity;

    private double Best(MarkForm form, MarkQuery query, bool sibling)
    {
        var places = query.Length;
        if (before.Length < places + 1)
        {
            before = new double[places + 16];
            now = new double[places + 16];
        }
        for (var j = 0; j <= places; j++)
        {
            before[j] = j < places ? Start(form, query, j) : double.NegativeInfinity;
            // Where nothing may be printed, what stands behind may be the beginning.
            if (j > 0 && query.MayBeNothing(j - 1)) before[j] = Math.Max(before[j], before[j - 1] + query.Skip[j - 1]);
        }

        var glyphs = form.Glyphs;
        for (var i = 0; i < glyphs.Length; i++)
        {
            var glyph = glyphs[i];
            var free = sibling && i >= Stem && Glyphs.IsDigit(glyph);
            now[0] = glyph switch { MarkForm.Many => before[0], MarkForm.Line => before[0] + PatternLineMissing, MarkForm.One => before[0] - 1, _ => before[0] + Missing };
            for (var j = 1; j <= places; j++) now[j] = Step(glyph, free, i, j, query);
            (before, now) = (now, before);
        }
        var best = double.NegativeInfinity;
        for (var j = 1; j <= places; j++) best = Math.Max(best, before[j] + End(form, query, j));
        return best;
    }

    /// <summary>Best score of having laid glyphs 0..i, the last of them ending right before place j.</summary>
    private double Step(sbyte glyph, bool free, int i, int j, MarkQuery query)
    {
        var place = j - 1;
        // A line that starts inside the form: fine where the pattern says so, a break otherwise.
        var join = i > 0 && query.Starts[place] ? Broken : 0;
        if (glyph == MarkForm.Line) return before[j] + (query.Starts[j] ? -Broken : PatternLineMissing);
        if (glyph == MarkForm.Many) return Math.Max(before[j], now[j - 1] + join);
        if (query.Gap[place]) return Math.Max(Math.Max(before[j - 1] - 0.7, before[j]), now[j - 1]);

        var gain = glyph == MarkForm.One ? 0 : free && Glyphs.IsDigit(query.Best[place]) ? AnyDigit : query.Gains[place][glyph];
        var best = before[j - 1] + gain + join;
        best = Math.Max(best, before[j] + (glyph == MarkForm.One ? -1 : Missing));
        return Math.Max(best, now[j - 1] + (query.MayBeNothing(place) ? Math.Max(Extra, query.Skip[place]) : Extra) + join);
    }

    private static double Start(MarkForm form, MarkQuery query, int j)
    {
        if (j == 0) return 0;
        if (query.Starts[j]) return LaterLine;
        if (form.OpenStart) return 0;
        var left = query.Best[j - 1];
        if (left < 0) return UnreadBeside;
        return Glyphs.IsDigit(left) && Glyphs.IsDigit(form.Glyphs[0]) ? DigitBefore : LetterBefore;
    }

    private static double End(MarkForm form, MarkQuery query, int j)
    {
        if (query.Starts[j] || form.OpenEnd) return 0;
        var right = query.Best[j];
        if (right < 0) return UnreadBeside;
        if (!Glyphs.IsDigit(right)) return form.Literals <= 3 ? 4 * LetterAfter : LetterAfter;
        return Glyphs.IsDigit(form.Glyphs[^1]) ? DigitAfterDigit : DigitAfterLetter;
    }
}
