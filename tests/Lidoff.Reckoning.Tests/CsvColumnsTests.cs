using System.Text;
using Lidoff.Reckoning.Reckon;

namespace Lidoff.Reckoning.Tests;

public sealed class CsvColumnsTests
{
    [Theory]
    [InlineData("t,current\n0,1.5\n1,2.5\n", "current")]
    [InlineData("t;current\r\n0;1,5\r\n1;2,5\r\n", "current")]
    [InlineData("t\t\"current\"\n0\t1.5\n\n1\t2.5", "2")]
    public void A_column_is_found_by_header_or_place(string text, string column) =>
        Assert.Equal([1.5, 2.5], Read(text, column).Value);

    [Theory]
    [InlineData("t,current\n0,1\n", "voltage", "\"sleep\": log.csv has no column \"voltage\"; it has t, current.")]
    [InlineData("t,current\n0,1\n1,NaN\n", "current", "\"sleep\": line 3 of log.csv holds \"NaN\", which is not a finite number.")]
    [InlineData("t,current\n0\n", "current", "\"sleep\": line 2 of log.csv holds \"\", which is not a finite number.")]
    [InlineData("t,current\n", "current", "\"sleep\": column \"current\" of log.csv is empty.")]
    public void What_is_wrong_with_a_file_is_said_with_its_line(string text, string column, string sentence) =>
        Assert.Equal(sentence, Assert.Single(Read(text, column).Faults).Say);

    [Fact]
    public void A_file_that_is_no_text_is_refused()
    {
        var columns = new CsvColumns(_ => new MemoryStream([0x41, 0xFF, 0xFE, 0x0A]));
        Assert.Equal("\"sleep\": the file log.csv cannot be read as text.", Assert.Single(columns.Column("log.csv", "A", "sleep").Faults).Say);
    }

    [Fact]
    public void A_missing_file_is_refused()
    {
        var columns = new CsvColumns(_ => throw new FileNotFoundException());
        Assert.Equal("\"sleep\": the file log.csv cannot be read as text.", Assert.Single(columns.Column("log.csv", "A", "sleep").Faults).Say);
    }

    [Fact]
    public void A_measured_column_becomes_the_spread_of_an_input()
    {
        var reckoner = new Reckoner(new CsvColumns(_ => new MemoryStream(Encoding.UTF8.GetBytes("current\n4\n6\n"))));
        var result = reckoner.Reckon(new("average_current", [new("sleep_current", "log.csv#current"), new("event_charge", "0"), new("event_rate", "0")])).Value;
        Assert.Equal(5, result.Info.Unit.FromSi(result.Value.Value), 1e-12);
        // Two values drawn alike: half of the draws at 4, half at 6.
        Assert.Equal(4, result.Info.Unit.FromSi(result.Value.Interval90.Low), 1e-12);
        Assert.Equal(6, result.Info.Unit.FromSi(result.Value.Interval90.High), 1e-12);
    }

    private static Lidoff.Numbers.Failing.Outcome<IReadOnlyList<double>> Read(string text, string column) =>
        new CsvColumns(_ => new MemoryStream(Encoding.UTF8.GetBytes(text))).Column("log.csv", column, "sleep");
}
