using Lidoff.Opening.Cautioning;
using Lidoff.Opening.Kinds;
using Lidoff.Telling.Documents;
using Lidoff.Telling.Reporting;

namespace Lidoff.Telling.Sections;

/// <summary>The cautions of what was done to the specimen, and the house wording that goes with all of them.</summary>
public sealed class CautionsSection : IReportSection
{
    /// <inheritdoc/>
    public string Name => "cautions";

    /// <inheritdoc/>
    public int Place => 50;

    /// <inheritdoc/>
    public Section? Build(ReportContext context)
    {
        var said = context.View.Live<StepSighting>().SelectMany(step => Cautions.For(step.Value.Act))
            .Concat(context.View.Live<CellSighting>().SelectMany(cell => Cautions.For(cell.Value)))
            .Distinct().ToList();
        return new("take-care", "Take care", [Paragraph.Of(Cautions.House), .. said.Select(caution => new Documents.Caution(caution.Say))]);
    }
}
