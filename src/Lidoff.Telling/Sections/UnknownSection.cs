using Lidoff.Naming.Ranking;
using Lidoff.Telling.Claims;
using Lidoff.Telling.Documents;
using Lidoff.Telling.Reporting;

namespace Lidoff.Telling.Sections;

/// <summary>What is not known, said as plainly as what is: undecided spots with the measurement that would help most, and unsupported claims.</summary>
public sealed class UnknownSection : IReportSection
{
    /// <inheritdoc/>
    public string Name => "unknown";

    /// <inheritdoc/>
    public int Place => 45;

    /// <inheritdoc/>
    public Section? Build(ReportContext context)
    {
        var items = new List<IReadOnlyList<Inline>>();
        var bare = new List<string>();
        foreach (var spot in PartsSection.SpotNames(context))
        {
            var answer = context.Model.Identity(spot);
            if (answer.Level == NameLevel.Part) continue;
            if (!answer.Asked)
            {
                bare.Add(spot);
                continue;
            }

            var next = answer.Local.Next.Count > 0
                ? System.FormattableString.Invariant($" Next: {answer.Local.Next[0].Measure} (about {answer.Local.Next[0].Minutes:0.#} min, {answer.Local.Next[0].Bits:0.0} bits, risk: {answer.Local.Next[0].Risk}).")
                : "";
            items.Add([new TextRun($"Which part sits at {spot}: {answer.Says}.{next}")]);
        }

        if (bare.Count > 0) items.Add([new TextRun($"Nothing was seen yet that could name the parts at {string.Join(", ", bare)}.")]);
        foreach (var claim in context.Claims.Where(claim => claim.State == ClaimState.Lost))
        {
            items.Add([new TextRun($"{claim.Name} has no support: " + string.Join(" ", claim.Values.Where(value => value.Lost).Select(value => context.Model.Value(value.Reference).Missing)))]);
        }

        return items.Count == 0 ? null : new("unknown", "What is not known, and what to measure next", [new Listing(items)]);
    }
}
