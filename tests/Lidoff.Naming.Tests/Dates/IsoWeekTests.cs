using Lidoff.Naming.Dates;

namespace Lidoff.Naming.Tests.Dates;

public class IsoWeekTests
{
    // Days around New Year as Python's datetime.isocalendar gives them.
    [Theory]
    [InlineData("2005-01-01", "2004-W53")]
    [InlineData("2005-01-02", "2004-W53")]
    [InlineData("2006-01-01", "2005-W52")]
    [InlineData("2007-12-31", "2008-W01")]
    [InlineData("2008-12-29", "2009-W01")]
    [InlineData("2008-12-31", "2009-W01")]
    [InlineData("2009-12-31", "2009-W53")]
    [InlineData("2010-01-03", "2009-W53")]
    [InlineData("2010-01-04", "2010-W01")]
    [InlineData("2016-01-03", "2015-W53")]
    [InlineData("2018-12-31", "2019-W01")]
    [InlineData("2020-12-31", "2020-W53")]
    [InlineData("2021-01-03", "2020-W53")]
    [InlineData("2024-12-30", "2025-W01")]
    [InlineData("2025-12-29", "2026-W01")]
    [InlineData("2027-01-03", "2026-W53")]
    public void Days_around_new_year_fall_into_their_iso_week(string day, string week) =>
        Assert.Equal(week, IsoWeek.Of(DateOnly.ParseExact(day, "yyyy-MM-dd")).ToString());

    // OEIS A249404: years (modulo 400) that have 53 weeks begin 4, 9, 15, 20, 26, 32, 37, 43, 48; there are 71 of them in 400.
    [Fact]
    public void Years_with_53_weeks_are_those_of_A249404()
    {
        Assert.Equal([2004, 2009, 2015, 2020, 2026, 2032, 2037, 2043, 2048], Enumerable.Range(2000, 51).Where(y => IsoWeek.WeeksIn(y) == 53));
        Assert.Equal(71, Enumerable.Range(2000, 400).Count(y => IsoWeek.WeeksIn(y) == 53));
    }

    [Theory]
    [InlineData(2015, 53, true)]
    [InlineData(2016, 53, false)]
    [InlineData(2020, 0, false)]
    [InlineData(2020, 54, false)]
    public void Weeks_that_do_not_exist_are_null(int year, int week, bool exists) => Assert.Equal(exists, IsoWeek.At(year, week) is not null);

    [Fact]
    public void Every_week_of_four_centuries_round_trips()
    {
        for (var week = IsoWeek.At(2000, 1)!.Value; week.Year < 2400; week = week.Plus(1))
        {
            Assert.Equal(week, IsoWeek.At(week.Year, week.Week));
            Assert.Equal(week, IsoWeek.FromOrdinal(week.Ordinal));
        }
    }
}
