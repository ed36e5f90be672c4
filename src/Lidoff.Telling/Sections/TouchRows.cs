using System.Globalization;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Numbers.Quantities;
using Lidoff.Telling.Documents;
using Lidoff.Telling.Reporting;
using Lidoff.Tracing.Kinds;

namespace Lidoff.Telling.Sections;

/// <summary>
/// The touches that are more than a beep: what does not connect, ohms and volts, as rows of a table. Those of one point with one reading
/// stand in one row; none is left out.
/// </summary>
internal static class TouchRows
{
    /// <summary>The rows: what is apart first, then ohms, then volts, by points.</summary>
    public static List<IReadOnlyList<IReadOnlyList<Inline>>> Of(ReportContext context)
    {
        var told = context.View.Live<TouchSighting>().Where(touch => touch.Value is not { Beep: true, Ohms: null, Volts: null });
        return
        [
            .. told.GroupBy(touch => (Sort: Sort(touch.Value), Point: touch.Value.A.Text, Reading: Reading(touch.Value), touch.Specimen))
                .OrderBy(row => row.Key.Sort).ThenBy(row => row.Key.Point, NaturalOrder.Instance).ThenBy(row => row.Key.Reading, StringComparer.Ordinal).ThenBy(row => row.Key.Specimen, StringComparer.Ordinal)
                .Select(row => Row(row.Key.Point, row.Key.Reading, row.Key.Specimen, [.. row], context)),
        ];
    }

    private static IReadOnlyList<IReadOnlyList<Inline>> Row(string point, string reading, string specimen, List<Sighting<TouchSighting>> touches, ReportContext context)
    {
        foreach (var touch in touches) context.Cite(touch.Id);
        return
        [
            [new TextRun(point)],
            [new TextRun(string.Join(", ", touches.Select(touch => touch.Value.B.Text).Distinct(StringComparer.Ordinal).Order(NaturalOrder.Instance)))],
            [new TextRun(reading + (specimen.Length > 0 ? $" (specimen {specimen})" : ""))],
            [.. touches.SelectMany((touch, i) => new Inline[] { new TextRun(i == 0 ? "" : " "), new LinkRun((i + 1).ToString(CultureInfo.InvariantCulture), ReportContext.Anchor(touch.Id), LinkKind.Anchor) })],
        ];
    }

    private static int Sort(TouchSighting touch) => touch.Volts is not null ? 2 : touch.Ohms is not null ? 1 : 0;

    private static string Reading(TouchSighting touch)
    {
        var said = new List<string>();
        if (touch.Open) said.Add("open");
        if (touch.Beep is { } beep) said.Add(beep ? "beep" : "no beep");
        if (touch.Ohms is { } ohms) said.Add(QuantityText.WithUncertainty(ohms, touch.UOhm ?? 0, Units.Ohm));
        if (touch.Volts is { } volts) said.Add(QuantityText.WithUncertainty(volts, touch.UV ?? 0, Units.Volt));
        return string.Join(", ", said);
    }
}
