using Lidoff.Evidence.Grading;
using Lidoff.Telling.Documents;

namespace Lidoff.Telling.Sections;

/// <summary>What the grades mean, once, before the first figure that bears one.</summary>
internal static class GradeLegend
{
    // Sections that print grades; the first of a report that is there gets the line.
    private static readonly HashSet<string> Graded = ["questions", "what-it-says", "parts", "numbers"];

    /// <summary>The sections with the legend at the top of the first one that prints grades.</summary>
    public static IReadOnlyList<Section> Into(IReadOnlyList<Section> sections)
    {
        var first = sections.FirstOrDefault(section => Graded.Contains(section.Anchor));
        return [.. sections.Select(section => section == first ? section with { Blocks = [Legend, .. section.Blocks] } : section)];
    }

    private static Paragraph Legend { get; } = Paragraph.Of($"A grade says how well a thing is known: {string.Join(", ", Enum.GetValues<Grade>().Select(grade => $"{grade} {Grades.Says(grade)}"))}.");
}
