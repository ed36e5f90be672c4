namespace Lidoff.Naming.Marks;

/// <summary>
/// The best way to lay a form into a mark, by dynamic programming over (glyph of the form, place of the mark): a glyph may be another
/// than read, one may be missing or too many, a line may break inside; what stands before and after counts too, because a number that
/// goes on is another number.
/// </summary>
internal sealed class MarkAlignment
{
    // Natural logs; judgements without a source, set so that one misread glyph (about -3) costs less than one glyph too many.
    private const double Extra = -5.5, Missing = -5.5, Broken = -1.6, PatternLineMissing = -0.7;
    private const double LaterLine = -0.7, LetterBefore = -3, DigitBefore = -5, LetterAfter = -0.6, DigitAfterDigit = -6, DigitAfterLetter = -3, UnreadBeside = -1;

    private double[] before = new double[64], now = new double[64];

    /// <summary>Natural log of the likelihood ratio of the best lay, without the form's own share.</summary>
    internal double Score { get; private set; }

    /// <summary>
    /// The most that a beginning of the number gains by itself (three glyphs or more) where the mark goes on otherwise: what a sibling
    /// with the same beginning and another number would show.
    /// </summary>
    internal double HeadScore { get; private set; }

    internal void Lay(MarkForm form, MarkQuery query)
    {
        var places = query.Length;
        if (before.Length < places + 1)
        {
            before = new double[places + 16];
            now = new double[places + 16];
        }
        Score = double.NegativeInfinity;
        HeadScore = double.NegativeInfinity;
        for (var j = 0; j <= places; j++) before[j] = j < places ? Start(form, query, j) : double.NegativeInfinity;

        var glyphs = form.Glyphs;
        var literals = 0;
        var lastDigit = Array.FindLastIndex(glyphs, g => Glyphs.IsDigit(g));
        for (var i = 0; i < glyphs.Length; i++)
        {
            var glyph = glyphs[i];
            literals += glyph < MarkForm.One ? 1 : 0;
            now[0] = glyph switch { MarkForm.Many => before[0], MarkForm.Line => before[0] + PatternLineMissing, MarkForm.One => before[0] - 1, _ => before[0] + Missing };
            for (var j = 1; j <= places; j++) now[j] = Step(glyph, i, j, query);
            if (literals >= 3 && i < lastDigit)
            {
                for (var j = 1; j <= places; j++)
                {
                    if (now[j] > HeadScore && GoesOnDifferently(glyphs[i + 1], j, query)) HeadScore = now[j];
                }
            }
            (before, now) = (now, before);
        }
        for (var j = 1; j <= places; j++) Score = Math.Max(Score, before[j] + End(form, query, j));
    }

    /// <summary>Best score of having laid glyphs 0..i, the last of them ending right before place j.</summary>
    private double Step(sbyte glyph, int i, int j, MarkQuery query)
    {
        var place = j - 1;
        // A line that starts inside the form: fine where the pattern says so, a break otherwise.
        var join = i > 0 && query.Starts[place] ? Broken : 0;
        if (glyph == MarkForm.Line) return before[j] + (query.Starts[j] ? -Broken : PatternLineMissing);
        if (glyph == MarkForm.Many) return Math.Max(before[j], now[j - 1] + join);
        if (query.Gap[place]) return Math.Max(Math.Max(before[j - 1] - 0.7, before[j]), now[j - 1]);

        var gain = glyph == MarkForm.One ? 0 : query.Gains[place][glyph];
        var best = before[j - 1] + gain + join;
        best = Math.Max(best, before[j] + (glyph == MarkForm.One ? -1 : Missing));
        return Math.Max(best, now[j - 1] + Extra + join);
    }

    private static bool GoesOnDifferently(sbyte next, int j, MarkQuery query) =>
        query.Starts[j] ? Glyphs.IsDigit(next) : query.Best[j] >= 0 && query.Best[j] != next && next < MarkForm.One && !Glyphs.LookAlike(query.Best[j], next);

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
