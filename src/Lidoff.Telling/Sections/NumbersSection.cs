using Lidoff.Evidence.Entries;
using Lidoff.Opening.Kinds;
using Lidoff.Reckoning.Bound;
using Lidoff.Seeing.Kinds;
using Lidoff.Telling.Claims;
using Lidoff.Telling.Documents;
using Lidoff.Telling.Reporting;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Telling.Sections;

/// <summary>The numbers: lengths measured and quantities reckoned, each with its 90 % interval and grade.</summary>
public sealed class NumbersSection : IReportSection
{
    /// <inheritdoc/>
    public string Name => "numbers";

    /// <inheritdoc/>
    public int Place => 30;

    /// <inheritdoc/>
    public bool Graded => true;

    /// <inheritdoc/>
    public Section? Build(ReportContext context)
    {
        var lengths = context.View.Live<LengthSighting>().Select(length => $"length:{length.Value.Spot}:{length.Value.What}")
            .Concat(context.View.Live<ClickedShape>().Select(shape => ShapeReference.Of(shape.Value))).Distinct(StringComparer.Ordinal).Order(NaturalOrder.Instance);
        var reckonings = context.View.Live<ReckonBinding>().Select(binding => "reckoning:" + binding.Value.Reckoning).Distinct(StringComparer.Ordinal).Order(NaturalOrder.Instance);
        var masses = context.View.Live<MassSighting>().Select(mass => "mass:" + (mass.Value.Spot.Length > 0 ? mass.Value.Spot : "whole")).Distinct(StringComparer.Ordinal).Order(NaturalOrder.Instance);
        List<string> references = [.. reckonings, .. lengths, .. masses];
        if (references.Count == 0) return null;
        var rows = references.Select(reference => Row(reference, context)).ToList();
        return new("numbers", "Numbers", [new Table("Values with standard uncertainty; in nine cases of ten the true value lies in the interval.", ["What", "Value", "90 % interval", "How"], rows, new HashSet<int> { 1, 2 })]);
    }

    // The value stands in its own column.
    private static string How(string reference, ReportContext context) =>
        reference.Split(':', 3) is ["length", var spot, var what]
            ? string.Join("; ", context.Model.Length(spot, what).Readings.Select(reading => reading.How).Distinct(StringComparer.Ordinal))
            : string.Join("; ", context.View.Live<ClickedShape>().Select(shape => shape.Value).Where(shape => ShapeReference.Of(shape) == reference)
                .SelectMany(shape => context.Model.Shape(shape.Spot, shape.Shape, shape.What).Readings).Select(reading => reading.How).Distinct(StringComparer.Ordinal));

    private static IReadOnlyList<IReadOnlyList<Inline>> Row(string reference, ReportContext context)
    {
        var value = context.Model.Value(reference);
        return
        [
            [new TextRun(value.Says)],
            [context.Value(reference)],
            [new TextRun(value.Missing is null ? ReportContext.Interval(value) : "")],
            [new TextRun(value.Missing ?? (reference.StartsWith("mass:", StringComparison.Ordinal) ? "weighed" : value.Source.Length > 0 ? "formula: " + value.Source : How(reference, context)))],
        ];
    }
}
