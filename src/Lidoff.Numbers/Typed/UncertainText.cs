using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Quantities;
using Lidoff.Numbers.Spreads;

namespace Lidoff.Numbers.Typed;

/// <summary>
/// The value forms of <c>lidoff reckon</c>: <c>3.7</c>, <c>3.7±0.1</c> (normal, standard uncertainty), <c>3.5..4.2</c> (uniform),
/// <c>3.5..3.7..4.2</c> (triangular), each with or without a unit, and <c>file.csv#column</c> (drawn from the column).
/// </summary>
public static class UncertainText
{
    private const int LongestName = 4096;

    /// <summary>
    /// Reads one value into SI. A bare number, and every number of a column, is in <paramref name="expected"/>.
    /// <paramref name="readColumn"/> takes file and column name and gives the column's numbers; null where files cannot be
    /// read. A column's name becomes the source of the value, so that two inputs from one column share a draw.
    /// </summary>
    public static Outcome<Uncertain> Read(
        string? text,
        Unit expected,
        string where,
        Func<string, string, Outcome<IReadOnlyList<double>>>? readColumn = null,
        DecimalMark mark = DecimalMark.Machine) => text is not null && text.Contains('#', StringComparison.Ordinal)
            ? Column(text.Trim(), expected, where, readColumn)
            : TypedSpread.Read(text, expected, where, mark).Then(Of);

    /// <summary>A typed spread as an uncertain value.</summary>
    public static Uncertain Of(TypedSpread spread)
    {
        Guard.NotNull(spread);
        return spread.Shape switch
        {
            SpreadShape.Normal => Uncertain.Normal(spread.Centre, spread.U),
            SpreadShape.Uniform => Uncertain.Uniform(spread.Least, spread.Most),
            SpreadShape.Triangular => Uncertain.Triangular(spread.Least, spread.Centre, spread.Most),
            _ => Uncertain.Exact(spread.Centre),
        };
    }

    private static Outcome<Uncertain> Column(string text, Unit expected, string where, Func<string, string, Outcome<IReadOnlyList<double>>>? readColumn)
    {
        if (text.Length > LongestName) return TypedSentences.TooLong(where, text.Length, LongestName);
        var at = text.LastIndexOf('#');
        var (file, column) = (text[..at].Trim(), text[(at + 1)..].Trim());
        if (file.Length == 0 || column.Length == 0) return TypedSentences.ColumnForm(where, text);
        if (readColumn is null) return TypedSentences.NoFilesHere(where, text);
        return readColumn(file, column).Then(numbers => FromNumbers(numbers, text, expected, where));
    }

    private static Outcome<Uncertain> FromNumbers(IReadOnlyList<double> numbers, string text, Unit expected, string where)
    {
        if (numbers.Count == 0) return TypedSentences.EmptyColumn(where, text);
        var si = new double[numbers.Count];
        for (var i = 0; i < si.Length; i++)
        {
            si[i] = expected.ToSi(numbers[i]);
            if (!double.IsFinite(si[i])) return TypedSentences.ColumnNotFinite(where, text, i + 1);
        }

        return Uncertain.Empirical(si, text);
    }
}
