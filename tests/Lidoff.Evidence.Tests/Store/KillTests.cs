using System.Diagnostics;
using System.Security.Cryptography;
using System.Text;
using Lidoff.Evidence.Store;
using Lidoff.Evidence.Tests.Folding;
using Lidoff.TestSupport;

namespace Lidoff.Evidence.Tests.Store;

/// <summary>Writers are killed in the middle of their work, four at a time on one workspace, again and again.</summary>
public class KillTests
{
    private static readonly int Kills = Environment.GetEnvironmentVariable("LIDOFF_LONG") == "1" ? 2_000 : 200;

    private const int Together = 4;

    // The journal grows with each kill; a fresh one now and then keeps proving it cheap.
    private const int KillsOfOneWorkspace = 20;

    [Fact]
    public async Task No_kill_loses_an_acknowledged_entry_or_breaks_the_workspace()
    {
        var acknowledged = 0;
        for (var kills = 0; kills < Kills; kills += KillsOfOneWorkspace)
        {
            using var folder = new TempFolder();
            Bench.Open(folder.Path).Dispose();
            var known = new HashSet<string>();
            for (var round = kills; round < kills + KillsOfOneWorkspace; round += Together)
            {
                // 20 to 60 ms after its first acknowledgement, by the round: spread over all that a writer does.
                var all = await Task.WhenAll(Enumerable.Range(round, Together).Select(n => WriteUntilKilled(folder.Path, n, TimeSpan.FromMilliseconds(20 + (n * 7 % 41)))));
                known.UnionWith(all.SelectMany(ids => ids));
                Check(folder.Path, known);
            }

            acknowledged += known.Count;
        }

        TestContext.Current.SendDiagnosticMessage($"{Kills} kills, {acknowledged} acknowledged entries, none lost");
        Assert.True(acknowledged >= Kills);
    }

    private static void Check(string folder, HashSet<string> acknowledged)
    {
        using var workspace = Bench.Open(folder);
        Bench.Verified(workspace);
        var there = Histories.Entries(workspace.Store).Select(e => e.Id.Hex).ToHashSet();
        Assert.Subset(there, acknowledged);
        Assert.Single(workspace.Store.Heads("tag").Value);
    }

    private static async Task<List<string>> WriteUntilKilled(string folder, int number, TimeSpan life)
    {
        var seed = Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes("killed " + number)));
        var start = new ProcessStartInfo(Path.Combine(AppContext.BaseDirectory, "Lidoff.CrashWriter"), [folder, seed]) { RedirectStandardOutput = true, RedirectStandardError = true };
        using var writer = Process.Start(start)!;
        var complaints = writer.StandardError.ReadToEndAsync();
        var first = await writer.StandardOutput.ReadLineAsync();
        Assert.True(first is not null, first is null ? await complaints : "");
        await Task.Delay(life);
        writer.Kill();
        var rest = await writer.StandardOutput.ReadToEndAsync();
        await writer.WaitForExitAsync();
        Assert.Equal("", await complaints);

        // What stands after the last line end was cut off in the pipe; it was acknowledged, but nobody can tell its name.
        return [first!, .. rest.Split('\n')[..^1]];
    }
}
