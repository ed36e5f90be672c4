using Lidoff.Evidence.Folding;
using Lidoff.Numbers.Quantities;
using Lidoff.Telling.Documents;
using Lidoff.Telling.Drawing.Diagrams;
using Lidoff.Telling.Reporting;
using Lidoff.Tracing.Kinds;
using Lidoff.Tracing.Nets;

namespace Lidoff.Telling.Sections;

/// <summary>How it is joined: the supply, the blocks, and every net with its points and how it is known, and what else the meter showed.</summary>
public sealed class CircuitSection : IReportSection
{
    /// <inheritdoc/>
    public string Name => "circuit";

    /// <inheritdoc/>
    public int Place => 25;

    /// <inheritdoc/>
    public Section? Build(ReportContext context)
    {
        List<Block> blocks = [];
        var diagrams = DossierDiagrams.Of(context.View, context.Model);
        foreach (var diagram in diagrams)
        {
            blocks.Add(new Figure("diagram-" + diagram.Name, diagram.Drawn.Drawing, diagram.Drawn.Alternative, [new TextRun($"{diagram.Title}. {DiagramSentences.Legend}")]));
            foreach (var remark in diagram.Remarks) blocks.Add(new Paragraph([new TextRun(remark)]));
        }

        var rails = context.View.Newest<RailDrawn>(rail => rail.Rail).Where(rail => !rail.Value.Dropped).ToList();
        if (rails.Count > 0) blocks.Add(new Table("Rails, as a person settled them.", ["Rail", "Voltage", "From", "To", "Why"], [.. rails.Select(rail => Row(rail, context))], new HashSet<int> { 1 }));
        var nets = NetBook.Of(context.View).Nets;
        if (nets.Count > 0)
        {
            var rows = nets.Select(net => Row(net, context)).ToList();
            blocks.Add(new Table("Nets. Touched: joined by a meter's touch or by counted pins; by hand: drawn by a person.", ["Net", "Points", "How it is known"], rows, new HashSet<int>()));
        }

        if (TouchRows.Of(context) is { Count: > 0 } read)
        {
            blocks.Add(new Table("What the meter showed beside that. Apart: no beep, or open; volts are of the first point against the second.", ["Point", "Against", "Reading", "Noted"], read, new HashSet<int>()));
        }

        return blocks.Count == 0 ? null : new("circuit", "How it is joined", blocks);
    }

    private static IReadOnlyList<IReadOnlyList<Inline>> Row(Sighting<RailDrawn> rail, ReportContext context)
    {
        context.Cite(rail.Id);
        var drawn = rail.Value;
        var volts = drawn.V is { } v ? QuantityText.Noted(v, drawn.UV, "V") : "not measured";
        return
        [
            [new LinkRun(drawn.Rail, ReportContext.Anchor(rail.Id), LinkKind.Anchor)],
            [new TextRun(volts)],
            [new TextRun(drawn.From)],
            [new TextRun(string.Join(", ", drawn.To))],
            [new TextRun(drawn.Why)],
        ];
    }

    private static IReadOnlyList<IReadOnlyList<Inline>> Row(TracedNet net, ReportContext context)
    {
        foreach (var link in net.Links) context.Cite(link.Entry);
        return
        [
            [new TextRun(net.Name)],
            [new TextRun(string.Join(", ", net.Points.Select(point => point.Text)))],
            [
                new TextRun(net.Grade == NetGrade.Touched ? "touched: " : "by hand: "),
                .. net.Links.Select(link => link.Entry).Distinct().SelectMany((entry, i) => new Inline[]
                {
                    new TextRun(i == 0 ? "" : " "), new LinkRun((i + 1).ToString(System.Globalization.CultureInfo.InvariantCulture), ReportContext.Anchor(entry), LinkKind.Anchor),
                }),
            ],
        ];
    }
}
