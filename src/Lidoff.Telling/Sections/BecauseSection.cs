using System.Globalization;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Grading;
using Lidoff.Telling.Documents;
using Lidoff.Telling.Reporting;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Telling.Sections;

/// <summary>One block a printed value: how it came about, with what spread, by which formula, and the entries it rests on.</summary>
public sealed class BecauseSection : IReportSection
{
    /// <inheritdoc/>
    public string Name => "because";

    /// <inheritdoc/>
    public int Place => 80;

    /// <inheritdoc/>
    public Section? Build(ReportContext context)
    {
        if (context.Printed.Count == 0) return null;
        return new("because", "What each figure rests on", [.. context.Printed.Select(value => Of(value, context))]);
    }

    private static Anchored Of(ModelValue value, ReportContext context)
    {
        var blocks = new List<Block>();
        if (value.Missing is { } missing)
        {
            blocks.Add(Paragraph.Of(missing));
        }
        else
        {
            var interval = value.Number is null ? "" : $", 90 % interval {ReportContext.Interval(value)}";
            blocks.Add(Paragraph.Of($"{ReportContext.Print(value)}{interval}; grade {value.Grade}: {Grades.Says(value.Grade)}."));
        }

        if (value.Because.Count > 0) blocks.Add(new Listing([.. value.Because.Select(said => (IReadOnlyList<Inline>)[new TextRun(said)])]));
        if (value.Source.Length > 0) blocks.Add(Paragraph.Of("Formula: " + value.Source));
        if (value.RestsOn.Count > 0) blocks.Add(new Paragraph(Entries(value.RestsOn, context)));
        return new(ReportContext.Anchor(value.Reference), value.Says, blocks);
    }

    /// <summary>Each entry by its kind, counted where a kind comes again; its hash stands at the entry itself, where a reader can use it.</summary>
    private static List<Inline> Entries(ValueList<EntryId> ids, ReportContext context)
    {
        var wanted = ids.ToHashSet();
        var kinds = context.View.Entries.Where(folded => wanted.Contains(folded.Entry.Id)).Select(folded => (folded.Entry.Id, folded.Entry.Kind)).ToList();
        List<Inline> inlines = [new TextRun("Rests on ")];
        for (var i = 0; i < kinds.Count; i++)
        {
            var (id, kind) = kinds[i];
            if (i > 0) inlines.Add(new TextRun(", "));
            var name = kinds.Count(other => other.Kind == kind) == 1 ? kind : string.Create(CultureInfo.InvariantCulture, $"{kind} {kinds.Take(i + 1).Count(other => other.Kind == kind)}");
            inlines.Add(new LinkRun(name, ReportContext.Anchor(id), LinkKind.Anchor));
        }

        inlines.Add(new TextRun("."));
        return inlines;
    }
}
