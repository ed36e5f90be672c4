using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Reading.Lattices;

/// <summary>
/// A text and every text that differs from it by one symbol (another one, one less, one more), each with the natural log of its exact
/// probability: sums over all alignments, found from one forward-backward pass by bridging from what ends before a place to what starts
/// behind it.
/// </summary>
internal sealed class SingleEdits
{
    private SingleEdits(double whole, double[][] another, double[] missing, double[][] extra)
    {
        Whole = whole;
        Another = another;
        Missing = missing;
        Extra = extra;
    }

    /// <summary>The text itself.</summary>
    public double Whole { get; }

    /// <summary>Per place, per class from 0 on (the blank's entry is minus infinity): with that symbol there instead.</summary>
    public double[][] Another { get; }

    /// <summary>Per place: without the symbol there.</summary>
    public double[] Missing { get; }

    /// <summary>
    /// Per gap (before the first symbol, between, behind the last), per class: with one more there. A symbol beside its like is counted
    /// once, in the gap before it.
    /// </summary>
    public double[][] Extra { get; }

    public static SingleEdits Of(CtcAlignment text)
    {
        Guard.NotNull(text);
        var (length, classes) = (text.Text.Length, text.Lattice.Alphabet.Classes);
        var another = new double[length][];
        var missing = new double[length];
        var extra = new double[length + 1][];
        for (var i = 0; i <= length; i++)
        {
            extra[i] = Row(classes, c => i > 0 && text.Text[i - 1] == c ? double.NegativeInfinity : Bridge(text, i, i, c));
            if (i == length) break;
            another[i] = Row(classes, c => c == text.Text[i] ? text.LogProbability : Bridge(text, i, i + 1, c));
            missing[i] = Bridge(text, i, i + 1, 0);
        }

        return new(text.LogProbability, another, missing, extra);
    }

    /// <summary>The same text under two readers or pictures that are independent of one another.</summary>
    public static SingleEdits Together(SingleEdits a, SingleEdits b) => new(
        a.Whole + b.Whole, [.. a.Another.Zip(b.Another, Sum)], Sum(a.Missing, b.Missing), [.. a.Extra.Zip(b.Extra, Sum)]);

    private static double[] Sum(double[] a, double[] b) => [.. a.Zip(b, (x, y) => x + y)];

    private static double[] Row(int classes, Func<int, double> bridge)
    {
        var row = new double[classes];
        row[0] = double.NegativeInfinity;
        for (var c = 1; c < classes; c++) row[c] = bridge(c);
        return row;
    }

    /// <summary>Natural log of the probability of the symbols before <paramref name="from"/>, then a symbol (class 0: none), then those from <paramref name="to"/> on.</summary>
    private static double Bridge(CtcAlignment text, int from, int to, int symbol)
    {
        var lattice = text.Lattice;
        var steps = lattice.Steps;
        var left = from > 0 ? text.Text[from - 1] : 0;
        var right = to < text.Text.Length ? text.Text[to] : 0;
        double sum = 0, blankBefore = 0, here = 0, blankBehind = 0;
        for (var t = 0; t < steps; t++)
        {
            var ended = text.Ended(from, t - 1);
            if (right > 0)
            {
                var ready = symbol == 0
                    ? blankBefore + (left != right ? ended : 0)
                    : blankBehind + (symbol != right ? here : 0);
                if (ready > 0) sum += ready * text.Starting(to, t);
            }

            var row = lattice.Scaled(t);
            if (symbol > 0)
            {
                blankBehind = (blankBehind + here) * row[0];
                here = (here + blankBefore + (symbol != left ? ended : 0)) * row[symbol];
            }

            blankBefore = (blankBefore + ended) * row[0];
        }

        if (right == 0) sum = symbol == 0 ? blankBefore + text.Ended(from, steps - 1) : here + blankBehind;
        return lattice.Log(sum);
    }
}
