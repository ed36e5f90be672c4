using System.Globalization;
using Lidoff.Opening.Kinds;
using Lidoff.Telling.Documents;
using Lidoff.Telling.Reporting;

namespace Lidoff.Telling.Sections;

/// <summary>The specimens, how they behaved before anything was opened, and each step with what it destroyed.</summary>
public sealed class OpeningSection : IReportSection
{
    /// <inheritdoc/>
    public string Name => "opening";

    /// <inheritdoc/>
    public int Place => 15;

    /// <inheritdoc/>
    public Section? Build(ReportContext context)
    {
        var blocks = new List<Block>();
        var specimens = context.View.Live<SpecimenSighting>();
        if (specimens.Count > 0)
        {
            blocks.Add(new Listing([.. specimens.Select(each => (IReadOnlyList<Inline>)[new TextRun($"Specimen {each.Value.Specimen}{(each.Value.Says.Length > 0 ? ": " + each.Value.Says : "")}.")])]));
        }

        var states = context.View.Live<StateSighting>();
        if (states.Count > 0)
        {
            blocks.Add(Table(
                "Before it was opened",
                ["State", "What it does", "Lights", "Buttons", "Current, µA"],
                states.Select(each => new[] { each.Value.Name, each.Value.Says, each.Value.Lights, each.Value.Buttons, Microamperes(each.Value) }),
                4));
        }

        var steps = context.View.Live<StepSighting>();
        if (steps.Count > 0)
        {
            blocks.Add(Table(
                "Steps, in the order they were noted",
                ["Step", "Tool", "Minutes", "What it destroyed"],
                steps.Select(each => new[] { each.Value.Does, each.Value.Tool, Number(each.Value.Minutes), each.Value.Destroys.Length > 0 ? each.Value.Destroys : "nothing that was said" }),
                2));
        }

        return blocks.Count == 0 ? null : new("opening", "The specimens and how they were opened", blocks);
    }

    private static Table Table(string caption, IReadOnlyList<string> headings, IEnumerable<string[]> rows, int numberColumn) => new(
        caption,
        headings,
        [.. rows.Select(row => (IReadOnlyList<IReadOnlyList<Inline>>)[.. row.Select(cell => (IReadOnlyList<Inline>)[new TextRun(cell)])])],
        new HashSet<int> { numberColumn });

    private static string Microamperes(StateSighting state) => state.CurrentUa is not { } current ? ""
        : state.UUa is { } u ? Number(current) + " ± " + Number(u) : Number(current);

    private static string Number(double? value) => value?.ToString("0.###", CultureInfo.InvariantCulture) ?? "";
}
