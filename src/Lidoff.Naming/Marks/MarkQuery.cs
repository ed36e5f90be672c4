using Lidoff.Numbers;

namespace Lidoff.Naming.Marks;

/// <summary>
/// A mark made ready for scoring: all lines in one row of places; for each place, what each glyph printed there would gain over a mark
/// about which nothing is known (natural log of the likelihood ratio); where lines start.
/// </summary>
internal sealed class MarkQuery
{
    /// <summary>A reader's own probabilities are trusted up to this share; the rest is spread evenly (a crop of the wrong place, a glyph never learnt).</summary>
    private const double ReaderTrust = 0.98;

    private MarkQuery(double[][] gains, bool[] gap, bool[] starts, int[] best, double[] skip)
    {
        Gains = gains;
        Gap = gap;
        Starts = starts;
        Best = best;
        Skip = skip;
    }

    /// <summary>Per place, per glyph.</summary>
    internal double[][] Gains { get; }

    /// <summary>True where any number of glyphs may stand.</summary>
    internal bool[] Gap { get; }

    /// <summary>True where a line starts; one longer than the places, true at the end.</summary>
    internal bool[] Starts { get; }

    /// <summary>Likeliest glyph per place, -1 where unread.</summary>
    internal int[] Best { get; }

    /// <summary>Per place: natural log of what passing over it costs a form; plus infinity where the reader says there is a glyph.</summary>
    internal double[] Skip { get; }

    /// <summary>True where the reader says that nothing may be printed.</summary>
    internal bool MayBeNothing(int place) => double.IsFinite(Skip[place]);

    internal int Length => Gains.Length;

    internal static MarkQuery Of(MarkLattice lattice)
    {
        var gains = new List<double[]>();
        var gap = new List<bool>();
        var starts = new List<bool>();
        var best = new List<int>();
        var skip = new List<double>();
        foreach (var line in lattice.Lines)
        {
            var first = true;
            foreach (var place in line)
            {
                var chances = Chances(place);
                var nothing = ReaderTrust * place.Nothing;
                gains.Add(GainsOf(chances, nothing));
                skip.Add(nothing > 0 ? Elementary.Log(nothing) : double.PositiveInfinity);
                gap.Add(place.AnyNumber);
                starts.Add(first);
                best.Add(place.Alternatives.Count == 0 ? -1 : Array.IndexOf(chances, chances.Max()));
                first = false;
            }
        }
        starts.Add(true);
        return new MarkQuery([.. gains], [.. gap], [.. starts], [.. best], [.. skip]);
    }

    /// <summary>Probability of each glyph at a place, all being equally common before.</summary>
    private static double[] Chances(MarkPosition place)
    {
        if (place.Alternatives is [{ P: 1 } only] && Glyphs.Index(only.Glyph) is >= 0 and var read) return GlyphConfusion.Given(read);
        var chances = new double[Glyphs.Count];
        var named = 0.0;
        foreach (var (glyph, p) in place.Alternatives)
        {
            if (Glyphs.Index(glyph) is not (>= 0 and var g)) continue;
            chances[g] += p;
            named += p;
        }
        // What is said of a glyph here holds where there is one.
        var printed = Math.Max(1 - place.Nothing, 1e-6);
        named /= printed;
        for (var g = 0; g < Glyphs.Count; g++) chances[g] = (ReaderTrust * ((chances[g] / printed) + (Math.Max(0, 1 - named) / Glyphs.Count))) + ((1 - ReaderTrust) / Glyphs.Count);
        return chances;
    }

    private static double[] GainsOf(double[] chances, double nothing)
    {
        var any = 0.0;
        for (var g = 0; g < Glyphs.Count; g++) any += Glyphs.Background(g) * chances[g];
        var printed = nothing > 0 ? Elementary.Log(1 - nothing) : 0;
        return [.. chances.Select(p => Elementary.Log(p / any) + printed)];
    }
}
