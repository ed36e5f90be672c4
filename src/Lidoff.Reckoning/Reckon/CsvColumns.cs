using System.Globalization;
using System.Text;
using Lidoff.Numbers.Failing;

namespace Lidoff.Reckoning.Reckon;

/// <summary>
/// Columns of csv files: a header row, then numbers, parted by tab, semicolon or comma (the first of these that the header
/// holds); a decimal comma where the parting is not a comma. A column goes by its header or its place from 1.
/// </summary>
public sealed class CsvColumns(Func<string, Stream> open) : IColumnSource
{
    /// <summary>The most values that are read; a longer recording is a matter for a trace, not for an input.</summary>
    public const int MostValues = 1_000_000;

    /// <inheritdoc/>
    public Outcome<IReadOnlyList<double>> Column(string file, string column, string where)
    {
        try
        {
            using var reader = new StreamReader(open(file), new UTF8Encoding(false, true));
            return Read(reader, file, column, where);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or DecoderFallbackException)
        {
            return ReckoningSentences.FileUnreadable(where, file);
        }
    }

    private static Outcome<IReadOnlyList<double>> Read(StreamReader reader, string file, string column, string where)
    {
        var header = reader.ReadLine() ?? "";
        var parting = header.Contains('\t', StringComparison.Ordinal) ? '\t' : header.Contains(';', StringComparison.Ordinal) ? ';' : ',';
        string[] names = [.. header.Split(parting).Select(name => name.Trim().Trim('"'))];
        var place = Array.IndexOf(names, column);
        if (place < 0 && int.TryParse(column, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number <= names.Length) place = number - 1;
        if (place < 0) return ReckoningSentences.NoColumn(where, file, column, names);

        var values = new List<double>();
        for (var line = 2; reader.ReadLine() is { } text; line++)
        {
            if (string.IsNullOrWhiteSpace(text)) continue;
            var cells = text.Split(parting);
            var cell = place < cells.Length ? cells[place].Trim().Trim('"') : "";
            if (parting != ',') cell = cell.Replace(',', '.');
            if (!double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) || !double.IsFinite(value))
                return ReckoningSentences.NoNumberInFile(where, file, line, cell);
            if (values.Count == MostValues) return ReckoningSentences.TooManyValues(where, file, MostValues);
            values.Add(value);
        }

        return values.Count > 0 ? values : ReckoningSentences.EmptyColumn(where, file, column);
    }
}
