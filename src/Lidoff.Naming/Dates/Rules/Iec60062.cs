namespace Lidoff.Naming.Dates.Rules;

/// <summary>
/// Year letter and month character of IEC 60062: the letters go round in twenty years, A for 2010 (and 1990, 2030), skipping G, I, O, Q,
/// Y and Z; months are 1 to 9, O, N, D. The table is from memory and was checked against no copy of the standard.
/// </summary>
public sealed class Iec60062 : IDateRule
{
    private const string Years = "ABCDEFHJKLMNPRSTUVWX";

    /// <inheritdoc/>
    public string Name => "IEC 60062 year letter and month";

    /// <inheritdoc/>
    public double Weight => 0.5;

    /// <inheritdoc/>
    public IEnumerable<WeekSpan> Read(string code, Action<string> refuse)
    {
        if (code.Length != 2 || Month(code[1]) is not { } month) return [];
        var place = Years.IndexOf(code[0], StringComparison.Ordinal);
        if (place < 0) return [];
        var years = new[] { 1970 + place, 1990 + place, 2010 + place, 2030 + place }.Where(y => y <= DateDigits.LastYear);
        return DateDigits.Months(years, month, Name, refuse);
    }

    /// <summary>The month a character stands for, or null.</summary>
    internal static int? Month(char c) => c switch { >= '1' and <= '9' => c - '0', 'O' => 10, 'N' => 11, 'D' => 12, _ => null };
}
