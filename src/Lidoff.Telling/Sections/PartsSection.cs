using Lidoff.Evidence.Entries;
using Lidoff.Naming.Ranking;
using Lidoff.Seeing.Kinds;
using Lidoff.Telling.Claims;
using Lidoff.Telling.Documents;
using Lidoff.Telling.Reporting;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Telling.Sections;

/// <summary>The spots: what was read on each, which part it is with what odds, which rivals stay, and what would decide.</summary>
public sealed class PartsSection : IReportSection
{
    private const double WorthNaming = 0.02;

    /// <inheritdoc/>
    public string Name => "parts";

    /// <inheritdoc/>
    public int Place => 20;

    /// <inheritdoc/>
    public bool Graded => true;

    /// <inheritdoc/>
    public Section? Build(ReportContext context)
    {
        var spots = SpotNames(context);
        if (spots.Count == 0) return null;
        var rows = spots.Select(spot => Row(spot, context)).ToList();
        var table = new Table("Spots, with the verdict and its probability; a grade says how well it is known.", ["Spot", "Role", "Mark as read", "Part", "Rivals that stay", "To decide"], rows, new HashSet<int>());
        return new("parts", "Parts", [table]);
    }

    /// <summary>Every spot somebody spoke of, in natural order.</summary>
    internal static IReadOnlyList<string> SpotNames(ReportContext context) =>
    [
        .. context.View.Live<SpotSighting>().Select(spot => spot.Value.Spot)
            .Concat(context.View.Live<MarkSighting>().Select(mark => mark.Value.Spot))
            .Concat(context.View.Live<ReadingSighting>().Select(reading => reading.Value.Spot))
            .Concat(context.View.Live<BodySighting>().Select(body => body.Value.Spot))
            .Distinct(StringComparer.Ordinal).Order(NaturalOrder.Instance),
    ];

    private static IReadOnlyList<IReadOnlyList<Inline>> Row(string spot, ReportContext context)
    {
        var answer = context.Model.Identity(spot);
        var told = answer.Evidence.Told;
        var role = told.FirstOrDefault(each => each.Evidence == "role")?.Says ?? "";
        var mark = told.FirstOrDefault(each => each.Evidence == "mark")?.Says;
        return
        [
            [new TextRun(spot)],
            [new TextRun(role)],
            mark is null ? [new TextRun("not read")] : [new MarkRun(mark), .. ByMachine(answer.Evidence.Machine), .. answer.Evidence.Elsewhere.Select(other => new TextRun($"; specimen {other.Specimen} reads {other.Told}"))],
            [answer.Asked ? context.Value("part:" + spot) : new TextRun("not looked at")],
            [new TextRun(Rivals(answer))],
            [new TextRun(!answer.Asked || (answer.Level == NameLevel.Part && answer.P > 0.95) ? "" : answer.Local.Next.Count > 0 ? answer.Local.Next[0].Measure : "")],
        ];
    }

    // Whose reading it is must be seen: a machine's where no person read, and beside a person's what the machine read.
    private static IEnumerable<Inline> ByMachine(MachineReading? machine)
    {
        if (machine is null) yield break;
        if (machine.Counts) yield return new TextRun($", {WeighingSentences.ReadByMachine}, {ReportContext.Percent(machine.P)}");
        else yield return new TextRun($"; the machine read {machine.Mark}, {ReportContext.Percent(machine.P)}");
    }

    private static string Rivals(IdentityAnswer answer)
    {
        if (!answer.Asked) return "";
        var named = answer.Joint.States.Zip(answer.Joint.P).Where(pair => pair.First != answer.Says && pair.Second >= WorthNaming)
            .OrderByDescending(pair => pair.Second).ThenBy(pair => pair.First, StringComparer.Ordinal).Take(3)
            .Select(pair => $"{pair.First} {ReportContext.Percent(pair.Second)}");
        return string.Join("; ", named);
    }
}
