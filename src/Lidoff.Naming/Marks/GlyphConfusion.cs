namespace Lidoff.Naming.Marks;

/// <summary>
/// What a person's single reading of a glyph is worth: how likely each glyph is to be printed there, all being equally common before.
/// Look-alikes get four hundredths together, anything else one: rates of a careful reader of worn print, a judgement, no source.
/// </summary>
internal static class GlyphConfusion
{
    private const double AlikeShare = 0.04, OtherShare = 0.012;

    private static readonly double[][] Table = [.. Enumerable.Range(0, Glyphs.Count).Select(Row)];

    /// <summary>Probabilities of the 36 glyphs given that <paramref name="read"/> was read; they add up to 1.</summary>
    internal static double[] Given(int read) => Table[read];

    private static double[] Row(int read)
    {
        var alike = Enumerable.Range(0, Glyphs.Count).Count(g => g != read && Glyphs.LookAlike(read, g));
        var row = new double[Glyphs.Count];
        for (var g = 0; g < Glyphs.Count; g++)
        {
            row[g] = g == read ? 0 : OtherShare / (Glyphs.Count - 1) + (alike > 0 && Glyphs.LookAlike(read, g) ? AlikeShare / alike : 0);
        }
        row[read] = 1 - row.Sum();
        return row;
    }
}
