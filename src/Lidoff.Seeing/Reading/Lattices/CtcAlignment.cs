namespace Lidoff.Seeing.Reading.Lattices;

/// <summary>
/// All ways a text lies along a lattice, by the forward-backward recursion: states are the symbols with blanks before, between and
/// behind them; a blank may be left out except between two equal symbols.
/// </summary>
internal sealed class CtcAlignment
{
    private readonly double[] forward;
    private readonly int states;
    private double[]? behind;

    public CtcAlignment(CtcLattice lattice, int[] text)
    {
        Lattice = lattice;
        Text = text;
        states = (2 * text.Length) + 1;
        forward = Forward();
        var end = (lattice.Steps - 1) * states;
        Paths = forward[end + states - 1] + (states > 1 ? forward[end + states - 2] : 0);
    }

    public CtcLattice Lattice { get; }

    /// <summary>Classes of the text.</summary>
    public int[] Text { get; }

    /// <summary>Sum over all scaled paths.</summary>
    public double Paths { get; }

    public double LogProbability => Lattice.Log(Paths);

    /// <summary>Sum over the ways in which the first <paramref name="count"/> symbols end with the last of them at a step; 1 for none before the first step.</summary>
    public double Ended(int count, int step)
    {
        if (count == 0) return step < 0 ? 1 : 0;
        return step < 0 ? 0 : forward[(step * states) + (2 * count) - 1];
    }

    /// <summary>Sum over the ways in which the symbols from <paramref name="first"/> on start at a step and fill all that is left.</summary>
    public double Starting(int first, int step) => Lattice.Scaled(step, Text[first]) * Behind[(step * states) + (2 * first) + 1];

    /// <summary>Where a symbol stands along the line, 0 to 1: the mean over all alignments.</summary>
    public double Middle(int symbol)
    {
        double sum = 0, weighted = 0;
        for (var t = 0; t < Lattice.Steps; t++)
        {
            var at = (t * states) + (2 * symbol) + 1;
            var p = forward[at] * Behind[at];
            sum += p;
            weighted += p * (t + 0.5);
        }

        return sum > 0 ? Math.Min(1, weighted / sum / (Lattice.Steps * Lattice.Valid)) : (symbol + 0.5) / Text.Length;
    }

    // Most texts are only asked how probable they are.
    private double[] Behind => behind ??= Backward();

    private int Class(int state) => state % 2 == 0 ? 0 : Text[state / 2];

    private bool Jumps(int state) => state % 2 == 1 && state > 1 && Text[state / 2] != Text[(state / 2) - 1];

    private double[] Forward()
    {
        var sums = new double[Lattice.Steps * states];
        sums[0] = Lattice.Scaled(0, 0);
        if (states > 1) sums[1] = Lattice.Scaled(0, Text[0]);
        for (var t = 1; t < Lattice.Steps; t++)
        {
            var (now, before) = (t * states, (t - 1) * states);
            for (var s = 0; s < states; s++)
            {
                var sum = sums[before + s];
                if (s > 0) sum += sums[before + s - 1];
                if (Jumps(s)) sum += sums[before + s - 2];
                sums[now + s] = sum * Lattice.Scaled(t, Class(s));
            }
        }

        return sums;
    }

    private double[] Backward()
    {
        var sums = new double[Lattice.Steps * states];
        var end = (Lattice.Steps - 1) * states;
        sums[end + states - 1] = 1;
        if (states > 1) sums[end + states - 2] = 1;
        for (var t = Lattice.Steps - 2; t >= 0; t--)
        {
            var (now, after) = (t * states, (t + 1) * states);
            for (var s = 0; s < states; s++)
            {
                var sum = sums[after + s] * Lattice.Scaled(t + 1, Class(s));
                if (s + 1 < states) sum += sums[after + s + 1] * Lattice.Scaled(t + 1, Class(s + 1));
                if (s + 2 < states && Jumps(s + 2)) sum += sums[after + s + 2] * Lattice.Scaled(t + 1, Class(s + 2));
                sums[now + s] = sum;
            }
        }

        return sums;
    }
}
