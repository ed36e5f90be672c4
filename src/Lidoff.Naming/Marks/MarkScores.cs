using Lidoff.Naming.Knowing;
using Lidoff.Numbers;

namespace Lidoff.Naming.Marks;

/// <summary>
/// What one mark says about every part: natural logs of likelihood ratios against a mark about which nothing is known. With the
/// blunder rate, the mark may belong to another spot: then it shows whatever parts at large show, which bounds how far any mark can go.
/// </summary>
internal sealed class MarkScores
{
    /// <summary>
    /// Share of unlisted parts that are siblings of a listed one: the same beginning, another number. A judgement, no source.
    /// </summary>
    internal const double SiblingShare = 0.25;

    private readonly Dictionary<int, (double Ratio, MarkForm Best, double BestLog)> found = [];
    private readonly double[] unknown = new double[3];
    private readonly double[] siblingRatio;
    private readonly int[] siblingPart;
    private readonly NamingCatalogue catalogue;
    private readonly double wrongSpot, scale, keep;

    private MarkScores(MarkQuery query, NamingCatalogue catalogue, double blunderRate)
    {
        this.catalogue = catalogue;
        var stray = StrayRatio(query);
        unknown = [stray * MarkForms.UnknownRoomy, stray * MarkForms.UnknownSmall, stray * MarkForms.UnknownWithPattern];
        siblingPart = new int[ClassGroups.All.Count];
        siblingRatio = Score(query);
        keep = 1 - blunderRate;
        wrongSpot = blunderRate * Mean();
        scale = keep + wrongSpot;
    }

    internal static MarkScores Of(MarkLattice mark, NamingCatalogue catalogue, double blunderRate) => new(MarkQuery.Of(mark), catalogue, blunderRate);

    /// <summary>For a part.</summary>
    internal double Part(int index) => Elementary.Log(((keep * Ratio(index)) + wrongSpot) / scale);

    /// <summary>For an unlisted part that resembles no listed one.</summary>
    internal double None => Elementary.Log(((keep * (1 - SiblingShare)) + wrongSpot) / scale);

    /// <summary>For an unlisted sibling: its group, the part it resembles, the natural log of its share's ratio.</summary>
    internal IEnumerable<(int Group, int Part, double Log)> Siblings()
    {
        for (var g = 0; g < siblingRatio.Length; g++)
        {
            if (siblingRatio[g] > 0) yield return (g, siblingPart[g], Elementary.Log(keep * siblingRatio[g] / scale));
        }
    }

    /// <summary>The form that fits best, or null where nothing of the part's number is in the mark.</summary>
    internal MarkForm? BestForm(int index) => found.TryGetValue(index, out var f) && Elementary.Exp(f.BestLog) > Unknown(index) ? f.Best : null;

    private double Ratio(int index) => Unknown(index) + (found.TryGetValue(index, out var f) ? f.Ratio : 0);

    private double Unknown(int index) => unknown[catalogue.Parts[index].Marks.Count > 0 ? 2 : catalogue.Small[index] ? 1 : 0];

    /// <summary>
    /// How much likelier than a mark at large this one is when it holds nothing of a number: a code of three glyphs often does, a line
    /// of six or more with letters and digits is nearly always a number. Judgements, no source.
    /// </summary>
    private static double StrayRatio(MarkQuery query)
    {
        int longest = 0, run = 0;
        for (var i = 0; i < query.Length; i++)
        {
            run = query.Starts[i] ? 1 : run + 1;
            longest = Math.Max(longest, run);
        }
        return longest switch { <= 3 => 2, 4 => 1.2, 5 => 0.4, _ => 0.05 };
    }

    private double[] Score(MarkQuery query)
    {
        var alignment = new MarkAlignment();
        var groups = ClassGroups.All.Count;
        var siblings = new double[groups];
        Array.Fill(siblings, double.NegativeInfinity);
        foreach (var number in catalogue.Marks.Candidates(query))
        {
            var form = catalogue.Marks.Forms[number];
            var log = form.LogShare + alignment.Lay(form, query);
            if (log < -20) continue;
            // Where another number explains the mark no better, there is no sign of a sibling.
            var sibling = form.LogShare + alignment.LaySibling(form, query);
            var group = catalogue.GroupOf[form.Part];
            if (sibling > log && catalogue.LogPrior[form.Part] + sibling > siblings[group])
            {
                siblings[group] = catalogue.LogPrior[form.Part] + sibling;
                siblingPart[group] = form.Part;
            }
            var had = found.GetValueOrDefault(form.Part, (Ratio: 0.0, Best: form, BestLog: double.NegativeInfinity));
            found[form.Part] = (had.Ratio + Elementary.Exp(log), log > had.BestLog ? form : had.Best, Math.Max(log, had.BestLog));
        }
        var ratios = new double[groups];
        for (var g = 0; g < groups; g++)
        {
            var listed = catalogue.ListedMass[g];
            ratios[g] = listed > 0 && !double.IsNegativeInfinity(siblings[g]) ? SiblingShare * Elementary.Exp(siblings[g]) / listed : 0;
        }
        return ratios;
    }

    /// <summary>The mean ratio over all hypotheses by their priors: what the mark of a wrong spot would look like.</summary>
    private double Mean()
    {
        var sum = 0.0;
        for (var g = 0; g < siblingRatio.Length; g++) sum += Elementary.Exp(catalogue.NoneLogPrior[g]) * (1 - SiblingShare + siblingRatio[g]);
        foreach (var (index, f) in found.OrderBy(f => f.Key)) sum += Elementary.Exp(catalogue.LogPrior[index]) * f.Ratio;
        return sum;
    }
}
