using Lidoff.Telling.Documents;
using Lidoff.Telling.Reporting;
using Lidoff.Weighing.Becauses;
using Lidoff.Weighing.Quarrels;

namespace Lidoff.Telling.Sections;

/// <summary>Sightings that cannot all be true, said before anything else that is open, with what would settle them.</summary>
public sealed class QuarrelsSection : IReportSection
{
    /// <inheritdoc/>
    public string Name => "quarrels";

    /// <inheritdoc/>
    public int Place => 44;

    /// <inheritdoc/>
    public Section? Build(ReportContext context)
    {
        var payloads = new EntryPayloads(context.View);
        return context.Quarrels.Count == 0 ? null : new("quarrels", "What cannot all be true", [new Listing([.. context.Quarrels.Select(quarrel => Item(quarrel, context, payloads))])]);
    }

    // What an entry says is its name here; a long one is cut, its own line has it whole.
    private const int LongestName = 60;

    private static List<Inline> Item(Quarrel quarrel, ReportContext context, EntryPayloads payloads)
    {
        List<Inline> inlines = [new TextRun($"{quarrel.Say} To settle it: {quarrel.Settle}. It is between ")];
        for (var i = 0; i < quarrel.Members.Count; i++)
        {
            var member = quarrel.Members[i];
            context.Cite(member);
            if (i > 0) inlines.Add(new TextRun(i == quarrel.Members.Count - 1 ? " and " : ", "));
            var says = EntryWords.Say(payloads.Of(member)).TrimEnd('.');
            inlines.Add(new LinkRun(says.Length > LongestName ? says[..LongestName].TrimEnd() + "…" : says, ReportContext.Anchor(member), LinkKind.Anchor));
        }

        inlines.Add(new TextRun("."));

        return inlines;
    }
}
