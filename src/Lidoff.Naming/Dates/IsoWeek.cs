using System.Globalization;

namespace Lidoff.Naming.Dates;

/// <summary>
/// One week by ISO 8601: it starts on Monday, and week 01 is the one with the year's first Thursday. Ordered in time.
/// Written <c>2004-W03</c>.
/// </summary>
public readonly record struct IsoWeek : IComparable<IsoWeek>
{
    private readonly int monday;

    private IsoWeek(int monday) => this.monday = monday;

    /// <summary>The week's Monday.</summary>
    public DateOnly Monday => DateOnly.FromDayNumber(monday);

    /// <summary>The year the week is counted in, which near New Year is not always the calendar's.</summary>
    public int Year => ISOWeek.GetYear(Monday.ToDateTime(TimeOnly.MinValue));

    /// <summary>1 to 53.</summary>
    public int Week => ISOWeek.GetWeekOfYear(Monday.ToDateTime(TimeOnly.MinValue));

    /// <summary>Weeks since a fixed one, so that differences count weeks.</summary>
    public int Ordinal => monday / 7;

    /// <summary>The week with this <see cref="Ordinal"/>.</summary>
    public static IsoWeek FromOrdinal(int ordinal) => new(ordinal * 7);

    /// <summary>The week that holds <paramref name="day"/>.</summary>
    public static IsoWeek Of(DateOnly day) => new(day.DayNumber - (((int)day.DayOfWeek + 6) % 7));

    /// <summary>Week <paramref name="week"/> of <paramref name="year"/>, or null where the year has no such week (00, 54, or 53 in most years).</summary>
    public static IsoWeek? At(int year, int week) =>
        year is < 1900 or > 2999 || week < 1 || week > WeeksIn(year) ? null : Of(DateOnly.FromDateTime(ISOWeek.ToDateTime(year, week, DayOfWeek.Monday)));

    /// <summary>52 or 53.</summary>
    public static int WeeksIn(int year) => ISOWeek.GetWeeksInYear(year);

    /// <summary>The week <paramref name="weeks"/> later (or earlier, below zero).</summary>
    public IsoWeek Plus(int weeks) => new(monday + (7 * weeks));

    /// <inheritdoc/>
    public int CompareTo(IsoWeek other) => monday.CompareTo(other.monday);

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Year:0000}-W{Week:00}");

    /// <summary>Earlier.</summary>
    public static bool operator <(IsoWeek a, IsoWeek b) => a.monday < b.monday;

    /// <summary>Later.</summary>
    public static bool operator >(IsoWeek a, IsoWeek b) => a.monday > b.monday;

    /// <summary>Earlier or the same.</summary>
    public static bool operator <=(IsoWeek a, IsoWeek b) => a.monday <= b.monday;

    /// <summary>Later or the same.</summary>
    public static bool operator >=(IsoWeek a, IsoWeek b) => a.monday >= b.monday;
}
