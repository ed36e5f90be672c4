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
        if (value.RestsOn.Count > 0) blocks.Add(new Paragraph(Entries(value.RestsOn)));
        return new(ReportContext.Anchor(value.Reference), value.Says, blocks);
    }

    private static List<Inline> Entries(ValueList<EntryId> ids)
    {
        List<Inline> inlines = [new TextRun("Rests on ")];
        for (var i = 0; i < ids.Count; i++)
        {
            if (i > 0) inlines.Add(new TextRun(", "));
            inlines.Add(new LinkRun(ids[i].Hex[..12], ReportContext.Anchor(ids[i]), LinkKind.Anchor));
        }

        inlines.Add(new TextRun("."));
        return inlines;
    }
}
