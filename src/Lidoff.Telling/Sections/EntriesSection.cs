using System.Globalization;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Telling.Documents;
using Lidoff.Telling.Reporting;
using Lidoff.Weighing.Becauses;

namespace Lidoff.Telling.Sections;

/// <summary>The entries that the report leans on: what, by whom, when, and the raw file with its hash.</summary>
public sealed class EntriesSection : IReportSection
{
    /// <inheritdoc/>
    public string Name => "entries";

    /// <inheritdoc/>
    public int Place => 90;

    /// <inheritdoc/>
    public Section? Build(ReportContext context)
    {
        // In fold order: what came later stands later, whatever the ids happen to be.
        var cited = context.Cited.ToHashSet();
        var entries = context.View.Entries.Where(folded => cited.Contains(folded.Entry.Id)).ToList();
        var payloads = new EntryPayloads(context.View);
        return entries.Count == 0 ? null : new("entries", "The entries", [.. entries.Select(folded => Of(folded, context, payloads))]);
    }

    private static Anchored Of(FoldedEntry folded, ReportContext context, EntryPayloads payloads)
    {
        var entry = folded.Entry;
        List<Inline> inlines =
        [
            new TextRun(string.Create(CultureInfo.InvariantCulture, $"Noted {entry.At:yyyy-MM-dd HH:mm} UTC{(entry.By.Length > 0 ? " by " + entry.By : "")}; ")),
            new TextRun(Says(entry.Id, context, payloads)),
            new TextRun(folded.Fate == EntryFate.Live ? " Entry " : $" This entry is {folded.Fate.ToString().ToLowerInvariant()}. Entry "),
            new MarkRun(entry.Id.Hex),
            new TextRun("."),
        ];
        if (Picture(payloads.Of(entry.Id), context) is { } picture)
        {
            inlines.Add(new TextRun(" See "));
            inlines.Add(new LinkRun("the picture", PicturesSection.Anchor(picture.Sha256), LinkKind.Anchor));
            inlines.Add(new TextRun(" and "));
            inlines.Add(new LinkRun("its file", picture.File, LinkKind.File));
            if (payloads.Of(entry.Id) is FileAdded)
            {
                inlines.Add(new TextRun(", SHA-256 of the original "));
                inlines.Add(new MarkRun(picture.Sha256));
            }

            inlines.Add(new TextRun("."));
        }

        return new(ReportContext.Anchor(entry.Id), entry.Kind, [new Paragraph(inlines)]);
    }

    private static string Says(EntryId id, ReportContext context, EntryPayloads payloads) =>
        context.View.Live<Claims.ClaimWritten>().FirstOrDefault(sighting => sighting.Id == id)?.Value is { } claim ? $"claim {claim.Name}: {claim.Text}" : EntryWords.Say(payloads.Of(id), context.Model);

    private static ReportPicture? Picture(object? payload, ReportContext context)
    {
        var name = EntryWords.Picture(payload);
        if (name.Length == 0 || context.Model.Picture(name) is not { Found: true } answer) return null;
        return context.Pictures.FirstOrDefault(picture => picture.Sha256 == answer.Sha256);
    }
}
