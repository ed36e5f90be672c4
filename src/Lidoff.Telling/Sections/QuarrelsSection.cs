using Lidoff.Evidence.Entries;
using Lidoff.Telling.Documents;
using Lidoff.Telling.Reporting;
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
        var quarrels = QuarrelBook.Find(context.View, context.Model);
        return quarrels.Count == 0 ? null : new("quarrels", "What cannot all be true", [new Listing([.. quarrels.Select(quarrel => Item(quarrel, context))])]);
    }

    private static List<Inline> Item(Quarrel quarrel, ReportContext context)
    {
        List<Inline> inlines = [new TextRun($"{quarrel.Say} To settle it: {quarrel.Settle}. Between ")];
        foreach (EntryId member in quarrel.Members)
        {
            context.Cite(member);
            inlines.Add(new LinkRun(member.Hex[..12], ReportContext.Anchor(member), LinkKind.Anchor));
            inlines.Add(new TextRun(" "));
        }

        return inlines;
    }
}
