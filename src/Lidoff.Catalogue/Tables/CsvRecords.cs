using System.Text;

namespace Lidoff.Catalogue.Tables;

/// <summary>
/// Splits separated text (RFC 4180: quotes double, quoted line breaks allowed) into records. Never throws on content: an
/// unclosed quote ends with the text and is reported by <see cref="Unclosed"/>.
/// </summary>
public sealed class CsvRecords(string text, char separator)
{
    private readonly StringBuilder cell = new();
    private int at;
    private int line = 1;

    /// <summary>Line of the record that <see cref="Next"/> gave last, from 1.</summary>
    public int Line { get; private set; }

    /// <summary>Line on which a quote was opened that nothing closes; null while there is none.</summary>
    public int? Unclosed { get; private set; }

    /// <summary>The next record that is not blank, or null at the end.</summary>
    public List<string>? Next()
    {
        while (at < text.Length)
        {
            Line = line;
            var cells = Record();
            if (cells.Count > 1 || cells[0].Length > 0) return cells;
        }

        return null;
    }

    private List<string> Record()
    {
        var cells = new List<string>();
        while (true)
        {
            cells.Add(at < text.Length && text[at] == '"' ? Quoted() : Plain());
            if (at >= text.Length) return cells;
            var mark = text[at++];
            if (mark == separator) continue;
            if (mark == '\r' && at < text.Length && text[at] == '\n') at++;
            line++;
            return cells;
        }
    }

    private string Plain()
    {
        var start = at;
        while (at < text.Length && text[at] != separator && text[at] is not ('\n' or '\r')) at++;
        return text[start..at];
    }

    private string Quoted()
    {
        var opened = line;
        cell.Clear();
        at++;
        while (at < text.Length)
        {
            var mark = text[at++];
            if (mark != '"')
            {
                if (mark == '\n') line++;
                cell.Append(mark);
            }
            else if (at < text.Length && text[at] == '"')
            {
                cell.Append('"');
                at++;
            }
            else
            {
                return cell.Append(Plain()).ToString();
            }
        }

        Unclosed ??= opened;
        return cell.ToString();
    }
}
