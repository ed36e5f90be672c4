using System.CommandLine;
using System.Text.Json;

namespace Lidoff.Tests.Commands;

public sealed class ReckonCommandTests
{
    [Fact]
    public async Task A_number_comes_as_one_line_of_json_with_its_format_first()
    {
        var (code, talk) = await Run("reckon", "capacity_from_energy", "energy=0.45 Wh", "voltage=3.7", "--json");
        Assert.Equal(0, code);
        Assert.Empty(talk.Said);
        Assert.StartsWith("""{"format":1,"name":"capacity_from_energy","value":121.6216""", Assert.Single(talk.Out), StringComparison.Ordinal);
    }

    [Fact]
    public async Task For_people_the_number_has_its_interval_and_its_cautions_go_to_stderr()
    {
        var (code, talk) = await Run("reckon", "regulator_efficiency", "input_voltage=3.8", "output_voltage=1.8±0.02");
        Assert.Equal(0, code);
        Assert.Equal("regulator_efficiency: 47.37 ± 0.53 %; 90 % from 46.5 to 48.2 %", talk.Out[0]);
        Assert.Equal("doubt from: output_voltage 100 %", talk.Out[1]);
        Assert.Contains("Not given, so assumed: load_current 1 mA, quiescent_current 0 µA.", talk.Said);
    }

    [Fact]
    public async Task The_list_names_each_calculation_with_at_least_one_check()
    {
        var (code, talk) = await Run("reckon", "--list", "--json");
        Assert.Equal(0, code);
        Assert.True(talk.Out.Count >= 45);
        Assert.All(talk.Out, line => Assert.True(JsonDocument.Parse(line).RootElement.GetProperty("checks").GetInt32() > 0));
    }

    [Theory]
    [InlineData(2, "reckon")]
    [InlineData(2, "reckon", "runtime", "capacity")]
    [InlineData(2, "reckon", "runtime", "--sed", "3")]
    [InlineData(3, "reckon", "run_time", "capacity=3")]
    [InlineData(3, "reckon", "runtime", "capacity=NaN", "sleep_current=1")]
    [InlineData(3, "reckon", "runtime", "capacity=nowhere.csv#c", "sleep_current=1")]
    public async Task A_refusal_says_why_on_stderr_and_nothing_on_stdout(int expected, params string[] arguments)
    {
        var (code, talk) = await Run(arguments);
        Assert.Equal(expected, code);
        Assert.NotEmpty(talk.Said);
        Assert.Empty(talk.Out);
    }

    private static async Task<(int Code, RecordedTalk Talk)> Run(params string[] arguments)
    {
        var talk = new RecordedTalk();
        var folder = AppContext.BaseDirectory;
        var seat = new Seat(talk, TimeProvider.System, folder, folder, Path.Combine(folder, "no-workspace"), new Option<string?>("--workspace"));
        return (await LidoffProgram.Run(arguments, seat, TestContext.Current.CancellationToken), talk);
    }
}
