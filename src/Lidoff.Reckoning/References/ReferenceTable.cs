using System.Globalization;
using System.Text;
using Lidoff.Numbers.Failing;

namespace Lidoff.Reckoning.References;

/// <summary>
/// The values from outside that belong to one calculation: <c>NAME.reference.csv</c>, a header of its input keys followed
/// by <c>expected,tolerance,origin,source</c>. The tests check each row; <c>reckon --list</c> counts them.
/// </summary>
public static class ReferenceTable
{
    private static readonly string[] Trailer = ["expected", "tolerance", "origin", "source"];

    /// <summary>The rows of a calculation; empty when it has no table. A table that does not fit is a programmer's mistake.</summary>
    public static IReadOnlyList<ReferenceRow> Of(CalculationInfo info)
    {
        Guard.NotNull(info);
        var lines = Lines(info.Name);
        if (lines.Count == 0) return [];
        var header = info.Inputs.Select(input => input.Key).Concat(Trailer);
        Guard.That(lines[0] == string.Join(',', header), $"{info.Name}.reference.csv with the header {string.Join(',', header)}");
        return [.. lines.Skip(1).Select(line => Row(line, info.Inputs.Count))];
    }

    /// <summary>How many rows a calculation has, without reading them.</summary>
    public static int Count(string name) => Math.Max(0, Lines(name).Count - 1);

    private static List<string> Lines(string name)
    {
        using var stream = typeof(ReferenceTable).Assembly.GetManifestResourceStream(name + ".reference.csv");
        if (stream is null) return [];
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return [.. reader.ReadToEnd().Split('\n').Where(line => line.Length > 0)];
    }

    private static ReferenceRow Row(string line, int inputs)
    {
        var cells = Cells(line);
        Guard.That(cells.Count == inputs + Trailer.Length, "a reference row of " + (inputs + Trailer.Length) + " cells: " + line);
        double Number(int i) => double.Parse(cells[i], NumberStyles.Float, CultureInfo.InvariantCulture);
        return new([.. Enumerable.Range(0, inputs).Select(Number)], Number(inputs), Number(inputs + 1), cells[inputs + 2], cells[inputs + 3]);
    }

    // RFC 4180 within one line: cells with a comma stand in quotes, a quote in them is doubled.
    private static List<string> Cells(string line)
    {
        var cells = new List<string>();
        var cell = new StringBuilder();
        var quoted = false;
        for (var i = 0; i < line.Length; i++)
        {
            if (line[i] == '"' && quoted && i + 1 < line.Length && line[i + 1] == '"') cell.Append(line[i++]);
            else if (line[i] == '"') quoted = !quoted;
            else if (line[i] == ',' && !quoted)
            {
                cells.Add(cell.ToString());
                cell.Clear();
            }
            else cell.Append(line[i]);
        }

        cells.Add(cell.ToString());
        return cells;
    }
}
