using Lidoff.Evidence.Grading;
using Lidoff.Telling.Documents;
using Lidoff.Telling.Reporting;

namespace Lidoff.Telling.Sections;

/// <summary>What the grades mean, once, before the first figure that bears one.</summary>
internal static class GradeLegend
{
    /// <summary>What the sections made, with the legend at the top of the first one that prints grades.</summary>
    public static IReadOnlyList<Section> Into(IReadOnlyList<(IReportSection By, Section Made)> sections)
    {
        var first = sections.FirstOrDefault(each => each.By.Graded).Made;
        return [.. sections.Select(each => each.Made == first ? first with { Blocks = [Legend, .. first.Blocks] } : each.Made)];
    }

    private static Paragraph Legend { get; } = Paragraph.Of($"A grade says how well a thing is known: {string.Join(", ", Enum.GetValues<Grade>().Select(grade => $"{grade} {Grades.Says(grade)}"))}.");
}
