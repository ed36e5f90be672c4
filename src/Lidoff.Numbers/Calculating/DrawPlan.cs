using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Spreads;
using Lidoff.Numbers.Spreads.Shapes;

namespace Lidoff.Numbers.Calculating;

/// <summary>
/// Which inputs share what: in each block the identities are drawn first, then one or two uniforms for each source in the
/// order of the inputs, then the correlated inputs through a normal (Gaussian) copula.
/// </summary>
internal sealed class DrawPlan
{
    private const int Block = MonteCarlo.Block;

    private readonly IReadOnlyList<Uncertain> inputs;
    private readonly CorrelationMatrix? correlations;
    private readonly int[] identityOf;
    private readonly int[] sourceOf;
    private readonly int identities;
    private readonly bool[] sourceTakesTwo;
    private readonly bool[] correlated;

    public DrawPlan(IReadOnlyList<Uncertain> inputs, CorrelationMatrix? correlations)
    {
        this.inputs = inputs;
        this.correlations = correlations;
        correlated = new bool[inputs.Count];
        (identityOf, identities) = Groups(inputs, i => i.Identity, i => i.Identity.Length > 0);
        (sourceOf, var sources) = Groups(inputs, i => i.Source, i => i.U > 0);
        sourceTakesTwo = new bool[sources];
        for (var i = 0; i < inputs.Count; i++)
        {
            correlated[i] = correlations is not null && correlations.Touches(i);
            if (sourceOf[i] >= 0) sourceTakesTwo[sourceOf[i]] |= inputs[i].Shape.TakesTwo;
            Guard.That(!correlated[i] || inputs[i].Shape is not MixtureShape, "no correlation coefficient on an undecided identity");
            Guard.That(!correlated[i] || inputs[i].Source.Length == 0, "either a shared source or correlation coefficients, not both");
            for (var j = 0; j < i; j++)
                if (identityOf[i] >= 0 && identityOf[i] == identityOf[j])
                    Guard.That(
                        ((MixtureShape)inputs[i].Shape).Weights.AsSpan().SequenceEqual(((MixtureShape)inputs[j].Shape).Weights),
                        "the same weights for every input bound to identity " + inputs[i].Identity);
        }
    }

    public DrawScratch Scratch() => new(
        new double[inputs.Count * Block], new double[Math.Max(1, identities) * Block],
        new double[Math.Max(1, sourceTakesTwo.Length) * Block], new double[Math.Max(1, sourceTakesTwo.Length) * Block], new double[Block]);

    public void Draw(EightLanes generator, DrawScratch scratch)
    {
        generator.Uniform(scratch.Identity.AsSpan(0, identities * Block));
        for (var source = 0; source < sourceTakesTwo.Length; source++)
        {
            generator.Uniform(scratch.First.AsSpan(source * Block, Block));
            if (sourceTakesTwo[source]) generator.Uniform(scratch.Second.AsSpan(source * Block, Block));
        }

        for (var i = 0; i < inputs.Count; i++)
        {
            var into = scratch.Columns.AsSpan(i * Block, Block);
            if (sourceOf[i] < 0)
            {
                into.Fill(inputs[i].Value);
                continue;
            }

            var first = scratch.First.AsSpan(sourceOf[i] * Block, Block);
            var second = scratch.Second.AsSpan(sourceOf[i] * Block, Block);
            if (correlated[i]) Correlated(i, scratch, into);
            else if (inputs[i].Shape is MixtureShape mixture)
                Mixed(mixture, scratch.Identity.AsSpan(identityOf[i] * Block, Block), first, second, scratch.Spare, into);
            else inputs[i].Shape.Draw(first, second, into);
        }
    }

    // zᵢ = Σ rootᵢⱼ nⱼ with independent normals n; normal shapes take z directly, others its share.
    private void Correlated(int i, DrawScratch scratch, Span<double> into)
    {
        into.Clear();
        for (var j = 0; j <= i; j++)
        {
            var weight = correlations!.Root[(i * inputs.Count) + j];
            if (weight == 0 || sourceOf[j] < 0) continue;
            var first = scratch.First.AsSpan(sourceOf[j] * Block, Block);
            for (var row = 0; row < into.Length; row++)
                into[row] = Math.FusedMultiplyAdd(weight, NormalDistribution.Quantile(first[row]), into[row]);
        }

        for (var row = 0; row < into.Length; row++)
            into[row] = inputs[i].Shape is NormalShape normal
                ? Math.FusedMultiplyAdd(normal.Spread, into[row], normal.Centre)
                : inputs[i].Shape.Quantile(Math.Clamp(NormalDistribution.Cdf(into[row]), double.Epsilon, 1 - (1.0 / (1L << 53))));
    }

    private static void Mixed(
        MixtureShape mixture, ReadOnlySpan<double> identity, ReadOnlySpan<double> first, ReadOnlySpan<double> second, double[] spare, Span<double> into)
    {
        for (var alternative = 0; alternative < mixture.Alternatives.Length; alternative++)
        {
            mixture.Alternatives[alternative].Draw(first, second, spare);
            for (var row = 0; row < into.Length; row++)
                if (mixture.Pick(identity[row]) == alternative) into[row] = spare[row];
        }
    }

    // Numbers the groups in the order of the inputs; −1 where the input takes no part; an empty name is a group of its own.
    private static (int[] Of, int Count) Groups(IReadOnlyList<Uncertain> inputs, Func<Uncertain, string> name, Func<Uncertain, bool> takesPart)
    {
        var of = new int[inputs.Count];
        var numbers = new Dictionary<string, int>(StringComparer.Ordinal);
        var count = 0;
        for (var i = 0; i < of.Length; i++)
        {
            var key = name(inputs[i]);
            of[i] = !takesPart(inputs[i]) ? -1 : key.Length > 0 && numbers.TryGetValue(key, out var known) ? known : count++;
            if (of[i] >= 0 && key.Length > 0) numbers[key] = of[i];
        }

        return (of, count);
    }
}
