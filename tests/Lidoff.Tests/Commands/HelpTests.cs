using Lidoff.Commands;

namespace Lidoff.Tests.Commands;

/// <summary>What the program says of itself.</summary>
public sealed class HelpTests : IDisposable
{
    private readonly CommandRun run = new();

    public void Dispose() => run.Dispose();

    public static TheoryData<string> Names => [.. CommandTable.Names];

    public static TheoryData<string> Later => [.. CommandTable.Later];

    [Theory]
    [MemberData(nameof(Names))]
    public async Task Every_command_shows_one_example_and_its_workspace(string name)
    {
        var talk = new RecordedTalk();
        Assert.Equal(ExitCodes.Done, await LidoffProgram.Run([name, "--help"], Seats.Of(talk, run[""]), TestContext.Current.CancellationToken));
        var words = Assert.Single(talk.Out);
        Assert.Contains($"Example:\n    lidoff {name} ", words, StringComparison.Ordinal);
        Assert.Contains("--workspace ", words, StringComparison.Ordinal);
        Assert.Empty(talk.Said);
    }

    [Theory]
    [MemberData(nameof(Later))]
    public async Task A_command_of_the_contracts_that_comes_later_says_so(string name)
    {
        var (code, talk) = await run.Of(name, "x", "--json");
        Assert.Equal(ExitCodes.Usage, code);
        Assert.Empty(talk.Out);
        Assert.Equal($"lidoff {name} is promised and not built yet; `lidoff --help` lists what works today.", Assert.Single(talk.Said));
    }

    [Fact]
    public async Task Help_of_the_whole_lists_every_command_that_works()
    {
        var talk = new RecordedTalk();
        Assert.Equal(ExitCodes.Done, await LidoffProgram.Run([], Seats.Of(talk, run[""]), TestContext.Current.CancellationToken));
        Assert.All(CommandTable.Names, name => Assert.Contains($"\n  {name} ", Assert.Single(talk.Out), StringComparison.Ordinal));
    }
}
