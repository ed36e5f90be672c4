using System.Globalization;
using Lidoff.Numbers.Failing;

namespace Lidoff.Naming.Dates;

/// <summary>A run of weeks, both ends in it.</summary>
public readonly record struct WeekSpan(IsoWeek From, IsoWeek To)
{
    /// <summary>How many weeks, at least one.</summary>
    public int Weeks => To.Ordinal - From.Ordinal + 1;

    /// <summary>The weeks that touch the days from <paramref name="first"/> to <paramref name="last"/>.</summary>
    public static WeekSpan OfDays(DateOnly first, DateOnly last) => new(IsoWeek.Of(first), IsoWeek.Of(last));

    /// <summary>The weeks that touch a calendar month.</summary>
    public static WeekSpan OfMonth(int year, int month) =>
        OfDays(new DateOnly(year, month, 1), new DateOnly(year, month, DateTime.DaysInMonth(year, month)));

    /// <summary>True when the two have a week in common.</summary>
    public bool Touches(WeekSpan other) => From <= other.To && other.From <= To;

    /// <summary>Weeks that lie between two spans: 0 when they touch or follow each other.</summary>
    public int Gap(WeekSpan other) =>
        Math.Max(0, Math.Max(From.Ordinal - other.To.Ordinal, other.From.Ordinal - To.Ordinal));

    /// <summary>
    /// Reads <c>2019-01..2022-06</c>: each end a month (<c>2019-01</c>), a week (<c>2019-W05</c>), a day (<c>2019-01-31</c>) or a year
    /// (<c>2019</c>), both included.
    /// </summary>
    public static Outcome<WeekSpan> Read(string text)
    {
        var ends = Guard.NotNull(text).Trim().Split("..");
        if (ends.Length != 2 || ReadOne(ends[0]) is not { } first || ReadOne(ends[1]) is not { } last)
            return DateSentences.NotASpan(text);
        if (last.To < first.From) return DateSentences.SpanBackwards(text);
        return new WeekSpan(first.From, last.To);
    }

    private static WeekSpan? ReadOne(string text)
    {
        var parts = text.Trim().Split('-');
        if (!Number(parts[0], 4, out var year) || year is < 1900 or > 2999) return null;
        if (parts.Length == 1) return OfDays(new DateOnly(year, 1, 1), new DateOnly(year, 12, 31));
        if (parts.Length == 2 && parts[1].StartsWith('W'))
            return Number(parts[1][1..], 2, out var week) && IsoWeek.At(year, week) is { } at ? new WeekSpan(at, at) : null;
        if (!Number(parts[1], 2, out var month) || month is < 1 or > 12) return null;
        if (parts.Length == 2) return OfMonth(year, month);
        if (parts.Length != 3 || !Number(parts[2], 2, out var day) || day < 1 || day > DateTime.DaysInMonth(year, month)) return null;
        var date = new DateOnly(year, month, day);
        return OfDays(date, date);
    }

    private static bool Number(string text, int digits, out int value) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out value) && text.Length == digits;
}
