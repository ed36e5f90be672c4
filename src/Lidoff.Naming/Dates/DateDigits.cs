namespace Lidoff.Naming.Dates;

/// <summary>What the date grammars share: digits and the years a short year can mean.</summary>
internal static class DateDigits
{
    /// <summary>First and last year that is considered at all: solid-state parts with week codes appear in the 1970s.</summary>
    internal const int FirstYear = 1970, LastYear = 2039;

    /// <summary>The number written in <paramref name="count"/> decimal digits at <paramref name="at"/>, or null.</summary>
    internal static int? Number(string code, int at, int count)
    {
        if (at + count > code.Length) return null;
        var value = 0;
        for (var i = at; i < at + count; i++)
        {
            if (!char.IsAsciiDigit(code[i])) return null;
            value = (value * 10) + code[i] - '0';
        }
        return value;
    }

    /// <summary>The year that two digits mean: 70 to 99 are of the last century, 00 to 39 of this one, the rest none.</summary>
    internal static int? TwoDigitYear(int digits) => digits >= 70 ? 1900 + digits : digits <= LastYear - 2000 ? 2000 + digits : null;

    /// <summary>Every year whose last digit is <paramref name="digit"/>: one digit leaves the decade open.</summary>
    internal static IEnumerable<int> OneDigitYears(int digit)
    {
        for (var year = FirstYear + digit; year <= LastYear; year += 10) yield return year;
    }

    /// <summary>ISO week of a year as a span; an impossible week is told and left out.</summary>
    internal static IEnumerable<WeekSpan> IsoWeeks(IEnumerable<int> years, int week, string rule, Action<string> refuse)
    {
        if (week is 0 or > 53)
        {
            refuse(DateSentences.NoSuchWeek(week.ToString("00", System.Globalization.CultureInfo.InvariantCulture), rule));
            yield break;
        }
        foreach (var year in years)
        {
            if (IsoWeek.At(year, week) is { } found) yield return new WeekSpan(found, found);
            else refuse(DateSentences.NoWeek53(year, rule));
        }
    }

    /// <summary>A month of some years as spans; an impossible month is told and left out.</summary>
    internal static IEnumerable<WeekSpan> Months(IEnumerable<int> years, int month, string rule, Action<string> refuse)
    {
        if (month is < 1 or > 12)
        {
            refuse(DateSentences.NoSuchMonth(month.ToString("00", System.Globalization.CultureInfo.InvariantCulture), rule));
            return [];
        }
        return years.Select(year => WeekSpan.OfMonth(year, month));
    }
}
