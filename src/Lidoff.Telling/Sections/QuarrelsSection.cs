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
        var links = new EntryLinks(context);
        return context.Quarrels.Count == 0 ? null : new("quarrels", "What cannot all be true", [new Listing([.. context.Quarrels.Select(quarrel => Item(quarrel, links))])]);
    }

    private static List<Inline> Item(Quarrel quarrel, EntryLinks links) =>
        [new TextRun($"{quarrel.Say} To settle it: {quarrel.Settle}. It is between "), .. links.To(quarrel.Members), new TextRun(".")];
}
