using Lidoff.Naming.Ranking;
using Lidoff.Telling.Claims;
using Lidoff.Telling.Documents;
using Lidoff.Telling.Reporting;
using Lidoff.Weighing.Moves;

namespace Lidoff.Telling.Sections;

/// <summary>What is not known, said as plainly as what is: undecided spots with the measurement that would help most, and unsupported claims.</summary>
public sealed class UnknownSection : IReportSection
{
    // As many as the bench shows beside its rooms.
    private const int Most = 8;

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
                ? FormattableString.Invariant($" Next: {answer.Local.Next[0].Measure} (about {answer.Local.Next[0].Minutes:0.#} min, {answer.Local.Next[0].Bits:0.0} bits, risk: {answer.Local.Next[0].Risk}).")
                : "";
            items.Add([new TextRun($"Which part sits at {spot}: {answer.Says}.{next}")]);
        }

        if (bare.Count > 0) items.Add([new TextRun($"Nothing was seen yet that could name the parts at {string.Join(", ", bare)}.")]);
        foreach (var claim in context.Claims.Where(claim => claim.State == ClaimState.Lost))
        {
            items.Add([new TextRun($"{claim.Name} has no support: " + string.Join(" ", claim.Values.Where(value => value.Lost).Select(value => context.Model.Value(value.Reference).Missing)))]);
        }

        List<Block> blocks = items.Count > 0 ? [new Listing(items)] : [];
        var moves = NextMoves.Of(context.View, context.Model, context.Tied, context.Quarrels);
        if (moves.Count > 0)
        {
            blocks.Add(new Table(
                moves.Count > Most ? $"The {Most} best next moves of {moves.Count}, most worth the minute first." : "The next moves, most worth the minute first.",
                ["Move", "For", "Minutes", "Bits", "Risk", "Why"], [.. moves.Take(Most).Select(Row)], new HashSet<int> { 2, 3 }));
        }

        return blocks.Count == 0 ? null : new("unknown", "What is not known, and what to measure next", blocks);
    }

    private static IReadOnlyList<IReadOnlyList<Inline>> Row(NextMove move) =>
    [
        [new TextRun(move.Move)],
        [new TextRun(move.Question)],
        [new TextRun(FormattableString.Invariant($"{move.Minutes:0.#}"))],
        [new TextRun(move.Bits is { } bits ? FormattableString.Invariant($"{bits:0.0}") : "not reckoned")],
        [new TextRun(MoveRisks.Word(move.Risk))],
        [new TextRun(move.Why)],
    ];
}
