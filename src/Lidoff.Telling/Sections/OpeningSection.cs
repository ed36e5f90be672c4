using System.Globalization;
using Lidoff.Numbers.Quantities;
using Lidoff.Opening.Cautioning;
using Lidoff.Opening.Kinds;
using Lidoff.Telling.Documents;
using Lidoff.Telling.Reporting;

namespace Lidoff.Telling.Sections;

/// <summary>The specimens, how they behaved before anything was opened, the cautions of what was done, each step with what it destroyed, and the cell.</summary>
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
        if (specimens.Count > 0) blocks.Add(Lines(specimens.Select(each => Specimen(each.Value))));
        var states = context.View.Live<StateSighting>();
        if (states.Count > 0)
        {
            blocks.Add(Table(
                "Before it was opened",
                ["State", "What it does", "Lights", "Buttons", "Current"],
                states.Select((each, i) => new[] { Joined(each.Value.Name, each.Specimen) + (Earlier(each, states.Skip(i + 1)) ? " (earlier)" : ""), Joined(each.Value.Says, Lasts(each.Value)), each.Value.Lights, each.Value.Buttons, each.Value.Current }),
                4));
        }

        var steps = context.View.Live<StepSighting>();
        var cells = context.View.Live<CellSighting>();
        // Cautions stand before the steps: whoever works along reads them first.
        if (CautionsSection.Bite(context)) blocks.Add(Paragraph.Of(Cautions.House));
        blocks.AddRange(BySteps(steps).Concat(cells.SelectMany(each => Cautions.For(each.Value)).Distinct().Select(caution => new Documents.Caution(caution.Say))));
        if (steps.Count > 0)
        {
            // The specimen gets no column of its own: a narrow page has room for five.
            blocks.Add(Table(
                "Steps, in the order they were noted",
                ["No.", "Step", "Tool", "Minutes", "What it destroyed"],
                steps.Select((each, i) => new[]
                {
                    Joined(Number(i + 1), each.Specimen), each.Value.Does, Joined(each.Value.Tool, each.Value.Setting), Number(each.Value.Minutes),
                    each.Value.Destroys.Length > 0 ? each.Value.Destroys : "nothing that was said",
                }),
                3));
        }

        var facts = cells.Select((each, i) => Cell(Outlived(each, cells.Skip(i + 1)))).Where(line => line.Length > 0).ToList();
        if (facts.Count > 0) blocks.Add(Lines(facts));
        return blocks.Count == 0 ? null : new("opening", "The specimens and how they were opened", blocks);
    }

    /// <summary>Each caution once, with the numbers of the steps it belongs to.</summary>
    private static IEnumerable<Block> BySteps(IReadOnlyList<Evidence.Folding.Sighting<StepSighting>> steps) => steps
        .SelectMany((step, i) => Cautions.For(step.Value.Act).Select(caution => (caution, Number: i + 1)))
        .GroupBy(pair => pair.caution)
        .Select(group => new Documents.Caution($"{(group.Count() == 1 ? "Step" : "Steps")} {string.Join(", ", group.Select(pair => Number(pair.Number)))}: {group.Key.Say}"));

    private static string Specimen(SpecimenSighting specimen) =>
        $"Specimen {Joined(specimen.Specimen, specimen.Revision)}{(specimen.Says.Length > 0 ? ": " + specimen.Says : "")}{(specimen.MassG is { } mass ? "; " + QuantityText.Noted(mass, specimen.UG, "g") : "")}.";

    /// <summary>The sighting without what a later one of the same cell says anew: that it was connected, then not, would read as both.</summary>
    private static CellSighting Outlived(Evidence.Folding.Sighting<CellSighting> cell, IEnumerable<Evidence.Folding.Sighting<CellSighting>> later) =>
        later.Any(other => other.Value.Connected is not null && other.Value.Spot == cell.Value.Spot && other.Specimen == cell.Specimen) ? cell.Value with { Connected = null } : cell.Value;

    /// <summary>True where a later current of the same state counts in its place.</summary>
    private static bool Earlier(Evidence.Folding.Sighting<StateSighting> state, IEnumerable<Evidence.Folding.Sighting<StateSighting>> later) =>
        state.Value.CurrentUa is not null && later.Any(other => other.Value.CurrentUa is not null && other.Value.Name == state.Value.Name && other.Specimen == state.Specimen);

    private static string Cell(CellSighting cell)
    {
        var facts = new List<string>();
        if (cell.Printed.Length > 0) facts.Add($"printed “{cell.Printed}”");
        if (cell.Volts is { } volts) facts.Add(QuantityText.Noted(volts, cell.UV, "V") + " at its wires");
        if (cell.Ohms is { } ohms) facts.Add($"{Number(ohms)} Ω inside");
        if (cell.Mm.Count > 0) facts.Add(QuantityText.Each(cell.Mm, cell.UMm, "mm"));
        if (cell.Wires is { } wires) facts.Add($"{Number(wires)} wires");
        if (cell.Connected is { } connected) facts.Add(connected ? "connected when last noted" : "disconnected when last noted");
        if (cell.Damaged is { } damaged) facts.Add(damaged ? "damaged" : "not damaged");
        return facts.Count == 0 ? "" : $"The cell{(cell.Spot.Length > 0 ? " " + cell.Spot : "")}: {string.Join("; ", facts)}.";
    }

    private static Listing Lines(IEnumerable<string> lines) => new([.. lines.Select(line => (IReadOnlyList<Inline>)[new TextRun(line)])]);

    private static Table Table(string caption, IReadOnlyList<string> headings, IEnumerable<string[]> rows, int numberColumn) => new(
        caption,
        headings,
        [.. rows.Select(row => (IReadOnlyList<IReadOnlyList<Inline>>)[.. row.Select(cell => (IReadOnlyList<Inline>)[new TextRun(cell)])])],
        new HashSet<int> { numberColumn });

    private static string Lasts(StateSighting state) => state.LastsS is not { } seconds ? ""
        : seconds >= 3600 ? $"lasts {Number(seconds / 3600)} h" : seconds >= 60 ? $"lasts {Number(seconds / 60)} min" : $"lasts {Number(seconds)} s";

    private static string Joined(params string[] words) => string.Join(", ", words.Where(word => word.Length > 0));

    private static string Number(double? value) => value?.ToString("0.###", CultureInfo.InvariantCulture) ?? "";
}
