using Lidoff.Naming.Asking;
using Lidoff.Naming.Knowing;
using Lidoff.Numbers;

namespace Lidoff.Naming.Factors;

/// <summary>
/// Weighs all evidence about the outline together. A part is a mixture of its outlines; what a part about which nothing is known would
/// show is the mixture of all outlines of the catalogue. Each factor's share is what it adds once those before it are known, so that
/// dependent evidence counts once.
/// </summary>
internal sealed class OutlineMixture
{
    /// <summary>How often a part turns up in a package its rows do not list. A judgement, no source.</summary>
    private const double UnlistedPackage = 0.02;

    /// <summary>How often a part that is not in the catalogue has an outline no row has.</summary>
    private const double UnlistedOutline = 0.2;

    private readonly Dictionary<string, double[]> shares = new(StringComparer.Ordinal);

    internal OutlineMixture(NameEvidence evidence, NamingCatalogue catalogue)
    {
        var table = catalogue.Outlines;
        var weights = Normalise([.. table.Counts]);
        var product = new double[table.Outlines.Length];
        Array.Fill(product, 1.0);
        var before = new double[table.Sets.Length];
        foreach (var factor in FactorRegistry.All.OfType<OutlineFactor>().Where(f => f.Speaks(evidence)))
        {
            Apply(factor, evidence, table, weights, product);
            var after = new double[table.Sets.Length];
            for (var i = 0; i < after.Length; i++) after[i] = LogRatio(table.Sets[i], product);
            shares[factor.Evidence] = [.. after.Zip(before, (a, b) => a - b)];
            before = after;
        }
    }

    internal IFactorReading Reading(OutlineFactor factor, FactorQuestion question) => new Share(factor, question, shares[factor.Evidence]);

    /// <summary>Multiplies each outline's ratio by this factor's, and moves the background's weights along.</summary>
    private static void Apply(OutlineFactor factor, NameEvidence evidence, OutlineTable table, double[] weights, double[] product)
    {
        var likelihoods = new double?[weights.Length];
        double known = 0, sum = 0;
        for (var o = 0; o < weights.Length; o++)
        {
            likelihoods[o] = factor.Likelihood(evidence, table.Outlines[o]);
            if (likelihoods[o] is not { } l) continue;
            known += weights[o];
            sum += weights[o] * l;
        }
        var wide = factor.Wide(evidence);
        var background = known > 0 ? ((1 - UnlistedOutline) * sum / known) + (UnlistedOutline * wide) : wide;
        for (var o = 0; o < weights.Length; o++)
        {
            // An outline that does not know this fact is taken to show it as often as any other would.
            var ratio = likelihoods[o] is { } l ? l / background : 1;
            product[o] *= ratio;
            weights[o] *= ratio;
        }
        Normalise(weights);
    }

    private static double LogRatio(int[] rows, double[] product)
    {
        if (rows.Length == 0) return 0;
        var sum = 0.0;
        foreach (var row in rows) sum += product[row];
        return Elementary.Log(((1 - UnlistedPackage) * sum / rows.Length) + UnlistedPackage);
    }

    private static double[] Normalise(double[] weights)
    {
        var sum = weights.Sum();
        for (var i = 0; i < weights.Length && sum > 0; i++) weights[i] /= sum;
        return weights;
    }

    private sealed class Share(OutlineFactor factor, FactorQuestion question, double[] logs) : IFactorReading
    {
        public double Part(int index) => logs[question.Catalogue.Outlines.SetOfPart[index]];

        public double None(int group) => 0;

        public string Say(int index) => factor.Say(question.Evidence, question.Catalogue.Parts[index], Part(index));
    }
}
