using Lidoff.Catalogue.Tables;

namespace Lidoff.Catalogue.Importing;

/// <summary>Reads a separated table. The separator is the one that splits the header into most known columns.</summary>
internal static class TableRows
{
    private static readonly char[] Separators = [',', ';', '\t', '|'];

    public static void Read(string text, Gathering into, ImportOptions options)
    {
        if (LongLine(text) is { } longLine)
        {
            into.Add(CatalogueSentences.LongLine(longLine, ImportLimits.LineLength));
            return;
        }

        var separator = Separators.MaxBy(s => Header(text, s).Count(Columns.Has));
        var records = new CsvRecords(text, separator);
        var header = Names(records.Next());
        if (!header.Contains("part"))
        {
            into.Add(CatalogueSentences.NoHeader(into.FileName));
            return;
        }

        var columns = Number(header, into);
        // Commas are free to be decimal marks only where they do not separate.
        var comma = options.DecimalComma ?? (separator == ',' ? false : null);
        var reader = new RowReader(into.FileName, comma);
        while (records.Next() is { } cells)
        {
            if (into.Full)
            {
                into.AddTooMany();
                return;
            }

            if (cells.Count > header.Count && cells.Skip(header.Count).Any(c => c.Length > 0)) into.Add(CatalogueSentences.TooManyCells(records.Line, cells.Count, header.Count));
            else if (!into.Doubled(records.Line, string.Join('\u001f', cells)))
                into.Add(reader.Read(records.Line, name => columns.TryGetValue(name, out var at) && at < cells.Count ? cells[at] : ""));
        }

        if (records.Unclosed is { } open) into.Add(CatalogueSentences.UnclosedQuote(open));
    }

    private static List<string> Header(string text, char separator) => Names(new CsvRecords(FirstLine(text), separator).Next());

    private static string FirstLine(string text)
    {
        var start = text.Length - text.AsSpan().TrimStart("\r\n").Length;
        var end = text.AsSpan(start).IndexOfAny('\r', '\n');
        return end < 0 ? text[start..] : text.Substring(start, end);
    }

    private static List<string> Names(List<string>? cells) => cells is null ? [] : [.. cells.Select(c => c.Trim().ToLowerInvariant())];

    private static Dictionary<string, int> Number(List<string> header, Gathering into)
    {
        var columns = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < header.Count; i++)
        {
            if (!columns.TryAdd(header[i], i) && Columns.Has(header[i])) into.Add(CatalogueSentences.DoubledColumn(header[i]));
            if (header[i].Length > 0 && !Columns.Has(header[i])) into.Note(CatalogueSentences.UnknownColumn(into.FileName, header[i]));
        }

        return columns;
    }

    private static int? LongLine(string text)
    {
        var line = 1;
        var start = 0;
        while (start < text.Length)
        {
            var end = text.IndexOf('\n', start);
            if (end < 0) end = text.Length;
            if (end - start > ImportLimits.LineLength) return line;
            start = end + 1;
            line++;
        }

        return null;
    }
}
