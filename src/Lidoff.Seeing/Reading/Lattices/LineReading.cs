using Lidoff.Evidence.Entries;
using Lidoff.Numbers;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Reading.Lattices;

/// <summary>What was read of one line: whole readings with their probabilities, and alternatives place by place.</summary>
/// <param name="Readings">Whole readings, likeliest first; at least one.</param>
/// <param name="Places">Places from the beginning to the end of the likeliest reading.</param>
public sealed record LineReading(ValueList<LineText> Readings, ValueList<ReadPlace> Places)
{
    private const int MostReadings = 10;
    private const int MostAlternatives = 8;

    // What is less likely is left in the rest.
    private const double Worth = 0.001;

    // A symbol too few is told where it is at least as likely as what an eye leaves for other characters. A choice of ours.
    private const double WorthAPlace = 0.05;

    // One of several lattices that cannot hold a text at all does not rule it out for good: beyond this a sum of paths is rounded to none.
    private const double Impossible = -700;

    /// <summary>The likeliest reading with <c>?</c> where no symbol is more likely than not.</summary>
    public string Text => string.Concat(Places.Select(place => place.Character));

    /// <summary>Probability that the likeliest reading is right from end to end.</summary>
    public double P => Readings[0].P;

    /// <summary>True when nothing was read: an empty line is likelier than any text.</summary>
    public bool IsEmpty => Readings[0].Text.Length == 0;

    /// <summary>
    /// Reads a line of one lattice, or of several of one and the same line (two pictures of it, two readers of one alphabet), whose
    /// probabilities are multiplied as if they erred independently.
    /// </summary>
    /// <param name="lattices">One at least, of one alphabet.</param>
    /// <param name="lineTemperature">What logs of whole readings are divided by before they are made to add up to one; 1 changes nothing.</param>
    public static LineReading Of(IReadOnlyList<CtcLattice> lattices, double lineTemperature = 1)
    {
        Guard.That(Guard.NotNull(lattices).Count > 0, "one lattice at least");
        var beams = lattices.Select(lattice => lattice.Likeliest).ToList();
        var texts = beams.Count == 1 ? [.. beams[0]] : beams.SelectMany(beam => beam.Select(each => each.Text)).Distinct(StringComparer.Ordinal)
            .Select(text => (Text: text, LogP: lattices.Sum(lattice => Math.Max(lattice.LogProbability(text), Impossible))))
            .OrderByDescending(each => each.LogP).ThenBy(each => each.Text, StringComparer.Ordinal).ToList();
        var readings = Weighed(texts, LogRest(beams, texts), lineTemperature);
        var best = texts[0].Text;
        var around = lattices.Select(lattice => lattice.Around(best)).ToList();
        var edits = around.Select(each => each.Edits).Aggregate(SingleEdits.Together);
        return new(readings, Placed(best, edits, [.. Enumerable.Range(0, best.Length).Select(i => around.Average(each => each.Alignment.Middle(i)))], lattices[0].Alphabet));
    }

    /// <summary>Two pieces of one line as one: any reading of the first before any of the second, as if they erred independently.</summary>
    /// <param name="first">What was read of its beginning.</param>
    /// <param name="second">What was read of its end.</param>
    /// <param name="until">Where the first piece ends, 0 to 1 along the whole.</param>
    /// <param name="from">Where the second begins, 0 to 1.</param>
    public static LineReading InARow(LineReading first, LineReading second, double until, double from)
    {
        Guard.NotNull(first);
        Guard.NotNull(second);
        var texts = first.Readings.SelectMany(a => second.Readings.Select(b => new LineText(a.Text + b.Text, a.P * b.P)))
            .GroupBy(each => each.Text, StringComparer.Ordinal).Select(same => new LineText(same.Key, same.Sum(each => each.P)))
            .OrderByDescending(each => each.P).ThenBy(each => each.Text, StringComparer.Ordinal).Take(MostReadings);
        return new([.. texts], [.. first.Places.Select(place => place with { Along = place.Along * until }), .. second.Places.Select(place => place with { Along = from + (place.Along * (1 - from)) })]);
    }

    /// <summary>
    /// Natural log of what is left for texts outside all beams. Of one lattice that is exact. Of several it is at most what one leaves out times
    /// the least of another's beam, and the smallest of these bounds is taken.
    /// </summary>
    private static double LogRest(List<IReadOnlyList<(string Text, double LogP)>> beams, List<(string Text, double LogP)> texts)
    {
        static double Left(IEnumerable<double> logs) => Elementary.Log(Math.Max(1e-12, 1 - logs.Sum(log => Elementary.Exp(log))));
        if (beams.Count == 1) return Left(texts.Select(each => each.LogP));
        return Enumerable.Range(0, beams.Count).Min(i => Left(beams[i].Select(each => each.LogP)) + Enumerable.Range(0, beams.Count).Where(j => j != i).Sum(j => beams[j][^1].LogP));
    }

    private static ValueList<LineText> Weighed(List<(string Text, double LogP)> texts, double logRest, double temperature)
    {
        var most = Math.Max(texts[0].LogP, logRest);
        double Weight(double log) => Elementary.Exp((log - most) / temperature);
        var sum = Weight(logRest) + texts.Sum(each => Weight(each.LogP));
        return [.. texts.Take(MostReadings).Select(each => new LineText(each.Text, Weight(each.LogP) / sum))];
    }

    private static ValueList<ReadPlace> Placed(string best, SingleEdits edits, double[] middles, ReadingAlphabet alphabet)
    {
        var places = new List<ReadPlace>();
        for (var i = 0; i <= best.Length; i++)
        {
            var (left, right) = (i > 0 ? middles[i - 1] : 0, i < best.Length ? middles[i] : 1);
            var extra = Place((left + right) / 2, edits.Whole, edits.Extra[i], alphabet, extra: true);
            if (extra.Top[0].Symbol.Length > 0 || extra.Top[0].P <= 1 - WorthAPlace) places.Add(extra);
            if (i == best.Length) break;
            // In a run of one symbol it is one too many that may be missing, not each of them.
            var missing = i + 1 < best.Length && best[i + 1] == best[i] ? double.NegativeInfinity : edits.Missing[i];
            places.Add(Place(middles[i], missing, edits.Another[i], alphabet, extra: false));
        }

        return [.. places];
    }

    private static ReadPlace Place(double along, double nothing, double[] symbols, ReadingAlphabet alphabet, bool extra)
    {
        var most = Math.Max(nothing, symbols.Max());
        if (double.IsNegativeInfinity(most)) return new(along, [new("", 0)], 1, extra);
        var weights = symbols.Select((log, c) => (Symbol: c == 0 ? "" : alphabet.Symbol(c).ToString(), Weight: Elementary.Exp((c == 0 ? nothing : log) - most))).ToList();
        var sum = weights.Sum(each => each.Weight);
        ValueList<ReadSymbol> top =
        [
            .. weights.Select(each => new ReadSymbol(each.Symbol, each.Weight / sum)).OrderByDescending(each => each.P).ThenBy(each => each.Symbol, StringComparer.Ordinal)
                .Take(MostAlternatives).Where((each, at) => at == 0 || each.P >= Worth),
        ];
        return new(along, top, Math.Max(0, 1 - top.Sum(each => each.P)), extra);
    }
}
