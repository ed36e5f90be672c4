using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Typed;

namespace Lidoff.Bench.Rooms.Trace.Typed;

/// <summary>
/// Touches pasted from a spreadsheet or a logger: a line each, two points and a reading, parted by tabs, semicolons, commas or blanks. A
/// first line without a reading is taken for a heading. All or none: one line that cannot be read keeps the others out.
/// </summary>
public static class TouchPaste
{
    /// <summary>Most lines of one paste.</summary>
    public const int Most = 2_000;

    /// <summary>Reads all lines; the fault of each that cannot be read, with its number.</summary>
    public static Outcome<IReadOnlyList<TouchTyped>> Read(string? text, MeterMode mode, DecimalMark mark)
    {
        var lines = (text ?? "").Split('\n').Select((line, i) => (Text: line.Trim('\r', ' ', '\uFEFF'), Number: i + 1)).Where(line => line.Text.Length > 0).ToList();
        if (lines.Count == 0) return TraceSentences.NothingPasted;
        if (lines.Count > Most) return TraceSentences.TooManyLines(lines.Count, Most);
        var by = Separator(lines[0].Text);
        var read = new List<TouchTyped>();
        var faults = new List<Fault>();
        for (var i = 0; i < lines.Count; i++)
        {
            var (line, number) = lines[i];
            var cells = by == ' ' ? line.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries) : line.Split(by).Select(Unquoted).ToArray();
            if (i == 0 && Heading(cells)) continue;
            // A comma can part cells or stand for a decimal point, not both at once.
            if (by == ',' && cells.Length > 3)
            {
                faults.Add(TraceSentences.CommasTwice(number, line));
                continue;
            }

            var touch = cells.Length < 3 ? TraceSentences.TwoPointsAndReading : TouchTyped.Read(string.Join(' ', cells), null, mode, mark);
            if (touch.TryValue(out var good)) read.Add(good);
            else faults.AddRange(touch.Faults.Select(fault => TraceSentences.OnLine(number, fault)));
        }

        if (faults.Count == 0 && read.Count == 0) return TraceSentences.NothingPasted;
        return faults.Count > 0 ? Outcome<IReadOnlyList<TouchTyped>>.Failed(faults) : read;
    }

    private static char Separator(string line) => line.Contains('\t', StringComparison.Ordinal) ? '\t' : line.Contains(';', StringComparison.Ordinal) ? ';' : line.Contains(',', StringComparison.Ordinal) ? ',' : ' ';

    private static bool Heading(string[] cells) => cells.Length >= 2 && cells[0].Length > 0 && !cells.Any(cell => cell.Any(char.IsAsciiDigit))
        && cells.Length >= 3 && !TouchTyped.Read(string.Join(' ', cells)).Ok;

    private static string Unquoted(string cell)
    {
        var text = cell.Trim();
        return text.Length >= 2 && text[0] == '"' && text[^1] == '"' ? text[1..^1].Replace("\"\"", "\"", StringComparison.Ordinal) : text;
    }
}
