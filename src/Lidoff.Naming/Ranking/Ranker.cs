using Lidoff.Catalogue.Parts;
using Lidoff.Naming.Asking;
using Lidoff.Naming.Factors;
using Lidoff.Naming.Knowing;
using Lidoff.Naming.Marks;
using Lidoff.Numbers;
using Lidoff.Numbers.Failing;

namespace Lidoff.Naming.Ranking;

/// <summary>
/// Ranks the catalogue's parts, and "none of these", for one spot: prior times factors. Everything is summed in the catalogue's fixed
/// order, so neither the order of evidence nor that of rows changes a bit.
/// </summary>
public sealed class Ranker
{
    /// <summary>A part is named from this probability on. A judgement: one error in five names is more than a reader forgives.</summary>
    public const double PartFrom = 0.8;

    /// <summary>A family is named from this probability on.</summary>
    public const double FamilyFrom = 0.8;

    /// <summary>Reasons weaker than this, in decibans, are not worth a line.</summary>
    private const double QuietDb = 0.05;

    /// <summary>How far evidence for a part speaks for its unlisted sibling too: most siblings share package and bus. A judgement, no source.</summary>
    private const double Likeness = 0.8;

    /// <summary>So many places are put in order at least, for what is to be measured next.</summary>
    private const int Kept = 40;

    /// <summary>Share of what is in no list that belongs to a family a person named: as many as are siblings of a listed part.</summary>
    public const double UnlistedMembers = MarkScores.SiblingShare;

    private readonly NamingCatalogue catalogue;

    /// <summary>Ranks against <paramref name="catalogue"/>.</summary>
    public Ranker(NamingCatalogue catalogue) => this.catalogue = Guard.NotNull(catalogue);

    /// <summary>
    /// Ranks one spot; <paramref name="top"/> candidates are written out, at least one, and every part that <paramref name="also"/>
    /// asks for, however unlikely: what a person settled is weighed against those.
    /// </summary>
    public LocalBelief Rank(NameEvidence evidence, int top = 10, Func<Part, bool>? also = null)
    {
        Guard.That(top >= 1, "at least one candidate");
        // Nothing in the catalogue is one; a part that a person settled on is weighed all the same.
        if (ClassGroups.IsUnlisted(Guard.NotNull(evidence).Class) && (also is null || !catalogue.Parts.Any(also))) return new LocalBelief([], 0, null, 1, NameLevel.None, [], [RankingSentences.Unlisted]);
        var question = new FactorQuestion(evidence, catalogue);
        var readings = FactorRegistry.All.Where(f => f.Speaks(evidence)).Select(f => (f.Evidence, Reading: f.Read(question))).ToArray();
        var posterior = Posterior([.. readings.Select(r => r.Reading)], out var none);
        var order = Order(posterior, top);

        var shown = order.Take(top).ToArray();
        if (also is not null)
        {
            shown = [.. shown.Concat(Enumerable.Range(0, posterior.Length).Where(i => also(catalogue.Parts[i]))).Distinct().OrderByDescending(i => posterior[i]).ThenBy(i => i)];
        }

        var shares = Millionths.Of([.. shown.Select(i => posterior[i]), Math.Max(0, 1 - none - shown.Sum(i => posterior[i])), none]);
        var candidates = shown.Select((i, k) => new Candidate(
            catalogue.Parts[i], OrderCodes.Narrow(catalogue.Parts[i], evidence), shares[k], Reasons(readings, i))).ToArray();
        var others = shares[^2];
        var noneP = shares[^1];
        var family = Family(posterior, order);
        var level = posterior.Length > 0 && posterior[order[0]] >= PartFrom ? NameLevel.Part : family is not null && family.P >= FamilyFrom ? NameLevel.Family : NameLevel.None;
        var next = level == NameLevel.Part && candidates[0].P > 0.995 ? [] : NextMeasures.For(evidence, catalogue, posterior, order, none);
        return new LocalBelief(candidates, others, family, noneP, level, next, Remarks(readings.Length, candidates, none));
    }

    /// <summary>
    /// Places in falling order of probability, ties by place; what is far below the best is left out where enough remains.
    /// </summary>
    private static int[] Order(double[] posterior, int top)
    {
        var least = posterior.Length == 0 ? 0 : posterior.Max() * 1e-6;
        var near = Enumerable.Range(0, posterior.Length).Where(i => posterior[i] >= least).ToArray();
        if (near.Length < Math.Min(posterior.Length, Math.Max(top, Kept))) near = [.. Enumerable.Range(0, posterior.Length)];
        return [.. near.OrderByDescending(i => posterior[i]).ThenBy(i => i)];
    }

    private double[] Posterior(IFactorReading[] readings, out double none)
    {
        var logs = (double[])catalogue.LogPrior.Clone();
        var noneLogs = (double[])catalogue.NoneLogPrior.Clone();
        foreach (var reading in readings)
        {
            for (var i = 0; i < logs.Length; i++) logs[i] += reading.Part(i);
            for (var g = 0; g < noneLogs.Length; g++) noneLogs[g] += reading.None(g);
        }
        noneLogs = [.. noneLogs, .. Siblings(readings)];
        var most = Math.Max(logs.Length > 0 ? logs.Max() : double.NegativeInfinity, noneLogs.Max());
        var total = 0.0;
        for (var i = 0; i < logs.Length; i++) total += logs[i] = Weight(logs[i] - most);
        none = 0;
        foreach (var log in noneLogs) none += Weight(log - most);
        total += none;
        for (var i = 0; i < logs.Length; i++) logs[i] /= total;
        none /= total;
        return logs;
    }

    /// <summary>
    /// Unlisted siblings of listed parts, for "none": other evidence speaks of them as of the part they resemble, if less firmly.
    /// </summary>
    private IEnumerable<double> Siblings(IFactorReading[] readings)
    {
        foreach (var hearing in readings.OfType<ISiblingReading>())
        {
            foreach (var (group, part, log) in hearing.Siblings)
                yield return catalogue.NoneLogPrior[group] + log + (Likeness * readings.Where(r => r != hearing).Sum(r => r.Part(part)));
        }
    }

    /// <summary>Far tails are zero: they would cost time and no digit that is shown.</summary>
    private static double Weight(double log) => log < -60 ? 0 : Elementary.Exp(log);

    private static Because[] Reasons((string Evidence, IFactorReading Reading)[] readings, int index) =>
        [.. readings.Select(r => new Because(r.Evidence, Math.Round(Decibans(r.Reading.Part(index)), 1), r.Reading.Say(index))).Where(b => Math.Abs(b.Db) >= QuietDb)];

    private FamilyBelief? Family(double[] posterior, int[] order)
    {
        if (order.Length == 0) return null;
        var sums = new Dictionary<string, double>(StringComparer.Ordinal);
        for (var i = 0; i < posterior.Length; i++) sums[catalogue.Families[i]] = sums.GetValueOrDefault(catalogue.Families[i]) + posterior[i];
        var best = sums.OrderByDescending(s => s.Value).ThenBy(s => s.Key, StringComparer.Ordinal).First();
        var name = FamilyName.Of(catalogue.Parts[order.First(i => catalogue.Families[i] == best.Key)].Name);
        return new FamilyBelief(name, Rounded(best.Value), catalogue.FamilyMembers(best.Key));
    }

    private static List<string> Remarks(int speaking, Candidate[] candidates, double none)
    {
        var remarks = new List<string>();
        if (speaking == 0) remarks.Add(RankingSentences.EmptyEvidence);
        if (none > 0.5 && candidates.Length > 0 && candidates[0].Because.Any(b => b.Db > 15) && candidates[0].Because.Any(b => b.Db < -8)) remarks.Add(RankingSentences.Contradiction);
        return remarks;
    }

    private static double Decibans(double log) => log * 4.342944819032518;

    private static double Rounded(double p) => Math.Round(p, 6);
}
