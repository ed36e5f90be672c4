using Lidoff.Opening.Cautioning;
using Lidoff.Opening.Kinds;
using Lidoff.Telling.Documents;
using Lidoff.Telling.Reporting;

namespace Lidoff.Telling.Sections;

/// <summary>The house wording of cautions, for a report that tells of no step and no cell; beside these it stands where they are told.</summary>
public sealed class CautionsSection : IReportSection
{
    /// <inheritdoc/>
    public string Name => "cautions";

    /// <inheritdoc/>
    public int Place => 50;

    /// <inheritdoc/>
    public Section? Build(ReportContext context) => Bite(context) ? null : new("take-care", "Take care", [Paragraph.Of(Cautions.House)]);

    /// <summary>True where the section on the opening prints cautions.</summary>
    internal static bool Bite(ReportContext context) => context.View.Live<StepSighting>().Any(step => Cautions.For(step.Value.Act).Count > 0)
        || context.View.Live<CellSighting>().Any(cell => Cautions.For(cell.Value).Count > 0);
}
