using Lidoff.Numbers;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Reading.Lattices;

/// <summary>
/// What a reader said step by step along a line: at each step a probability for each symbol and for the blank. A path is one class a
/// step; runs of one class are one symbol and blanks drop out; a text's probability is the sum over all paths that come to it, and over all
/// texts these add up to one (connectionist temporal classification: Graves, Fernández, Gomez, Schmidhuber, ICML 2006).
/// </summary>
public sealed class CtcLattice
{
    // Wide enough that a wider one changes no reading of ours; a choice between 12 and 24.
    private const int BeamWidth = 16;

    // Each step divided by its largest, so that products over a line stay in range.
    private readonly double[] scaled;
    private IReadOnlyList<(string Text, double LogP)>? likeliest;
    private Edited? around;

    private CtcLattice(double[] scaled, double logScale, int steps, ReadingAlphabet alphabet, double valid = 1)
    {
        Valid = valid;
        this.scaled = scaled;
        LogScale = logScale;
        Steps = steps;
        Alphabet = alphabet;
    }

    /// <summary>Steps along the line.</summary>
    public int Steps { get; }

    /// <summary>The symbols.</summary>
    public ReadingAlphabet Alphabet { get; }

    /// <summary>Share of the steps that lie on the line; those behind it are padding.</summary>
    internal double Valid { get; }

    /// <summary>Natural log of what all steps were divided by together.</summary>
    internal double LogScale { get; }

    /// <summary>A lattice of a network's scores: step after step, a score (logit) for each class, the blank first.</summary>
    /// <param name="scores">Steps × classes, finite.</param>
    /// <param name="alphabet">The symbols.</param>
    /// <param name="temperature">What scores are divided by, so that probabilities hold what they promise; above zero, 1 changes nothing.</param>
    /// <param name="valid">Share of the steps that lie on the line, the others behind it being padding; above 0, at most 1.</param>
    public static CtcLattice OfScores(ReadOnlySpan<float> scores, ReadingAlphabet alphabet, double temperature = 1, double valid = 1)
    {
        var classes = Guard.NotNull(alphabet).Classes;
        Guard.That(scores.Length > 0 && scores.Length % classes == 0, "a whole number of steps, one at least");
        Guard.Positive(temperature);
        Guard.That(valid is > 0 and <= 1, "a share of the steps");
        var scaled = new double[scores.Length];
        var logScale = 0.0;
        for (var at = 0; at < scores.Length; at += classes)
        {
            double most = Guard.Finite(scores[at]);
            for (var c = 1; c < classes; c++) most = Math.Max(most, Guard.Finite(scores[at + c]));
            var sum = 0.0;
            for (var c = 0; c < classes; c++) sum += scaled[at + c] = Elementary.Exp((scores[at + c] - most) / temperature);
            logScale -= Elementary.Log(sum);
        }

        return new(scaled, logScale, scores.Length / classes, alphabet, valid);
    }

    /// <summary>A lattice of probabilities: step after step, one for each class, the blank first; those of a step add up to one.</summary>
    public static CtcLattice OfProbabilities(ReadOnlySpan<double> probabilities, ReadingAlphabet alphabet)
    {
        var classes = Guard.NotNull(alphabet).Classes;
        Guard.That(probabilities.Length > 0 && probabilities.Length % classes == 0, "a whole number of steps, one at least");
        var scaled = probabilities.ToArray();
        var logScale = 0.0;
        for (var at = 0; at < scaled.Length; at += classes)
        {
            var most = 0.0;
            for (var c = 0; c < classes; c++) most = Math.Max(most, Guard.NotNegative(scaled[at + c]));
            Guard.Positive(most);
            for (var c = 0; c < classes; c++) scaled[at + c] /= most;
            logScale += Elementary.Log(most);
        }

        return new(scaled, logScale, scaled.Length / classes, alphabet);
    }

    /// <summary>Natural log of the probability that the line is exactly this text; minus infinity where it cannot be.</summary>
    public double LogProbability(string text) =>
        Alphabet.ClassesOf(text) is { } classes ? new CtcAlignment(this, classes).LogProbability : double.NegativeInfinity;

    /// <summary>Probability of a class at a step, divided by the likeliest one's there.</summary>
    internal double Scaled(int step, int symbolClass) => scaled[(step * Alphabet.Classes) + symbolClass];

    /// <summary>All classes of a step, divided by the likeliest.</summary>
    internal ReadOnlySpan<double> Scaled(int step) => scaled.AsSpan(step * Alphabet.Classes, Alphabet.Classes);

    /// <summary>The likeliest texts with the natural logs of their probabilities; searched for once.</summary>
    internal IReadOnlyList<(string Text, double LogP)> Likeliest => likeliest ??= PrefixBeam.Search(this, BeamWidth);

    /// <summary>A text and all that differ from it by one symbol; of the likeliest text reckoned once.</summary>
    internal (CtcAlignment Alignment, SingleEdits Edits) Around(string text)
    {
        if (around is { } known && known.Text == text) return (known.Alignment, known.Edits);
        var alignment = new CtcAlignment(this, Alphabet.ClassesOf(text) ?? throw new InvalidOperationException("a text of another alphabet"));
        around = new(text, alignment, SingleEdits.Of(alignment));
        return (alignment, around.Edits);
    }

    /// <summary>Natural log of a sum of scaled paths.</summary>
    internal double Log(double paths) => paths > 0 ? Elementary.Log(paths) + LogScale : double.NegativeInfinity;

    private sealed record Edited(string Text, CtcAlignment Alignment, SingleEdits Edits);
}
