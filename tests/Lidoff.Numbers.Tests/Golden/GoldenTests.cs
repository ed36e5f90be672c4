using System.Diagnostics;
using System.Globalization;
using System.Numerics;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace Lidoff.Numbers.Tests.Golden;

/// <summary>
/// The same bits on every machine: this program starts itself again with vector hardware switched off or narrowed, under a
/// Turkish locale and with two threads, and every child must report the committed hash. Which switches .NET 10 honours was tried
/// out; each child also says what hardware it saw, so that a switch that no longer works is noticed.
/// </summary>
public sealed class GoldenTests
{
    private const string Golden = "ba4fab6658e747df825f171029135beb01645ee234fdb146313cf4b9d536776b";

    private const string ReportTo = "LIDOFF_GOLDEN_REPORT";
    private const string ThreadsFor = "LIDOFF_GOLDEN_THREADS";

    [Fact]
    public void This_process_gives_the_committed_hash()
    {
        var threads = int.Parse(Environment.GetEnvironmentVariable(ThreadsFor) ?? "1", CultureInfo.InvariantCulture);
        var hash = GoldenRun.Hash(threads);
        if (Environment.GetEnvironmentVariable(ReportTo) is { Length: > 0 } report)
            File.WriteAllLines(report, [hash, .. Hardware()]);
        Assert.Equal(Golden, hash);
    }

    [Fact]
    public void Two_threads_give_the_committed_hash() => Assert.Equal(Golden, GoldenRun.Hash(2));

    [Theory]
    [InlineData("DOTNET_EnableHWIntrinsic", "vector")]
    [InlineData("DOTNET_EnableAVX2", "avx2")]
    [InlineData("DOTNET_EnableAVX512", "vector512")]
    public void A_child_without_some_vector_hardware_gives_the_same_hash(string variable, string gone)
    {
        var report = Child((variable, "0"));
        Assert.Equal(Golden, report[0]);
        Assert.DoesNotContain(gone, report);
        if (!Hardware().Contains(gone)) Assert.Skip("this machine has no " + gone + " to switch off; the hash was equal");
    }

    [Theory]
    [InlineData("1")]
    [InlineData("2")]
    public void A_child_in_a_Turkish_locale_gives_the_same_hash(string threads)
    {
        var report = Child(("LANG", "tr_TR.UTF-8"), ("LC_ALL", "tr_TR.UTF-8"), (ThreadsFor, threads));
        Assert.Equal(Golden, report[0]);

        // As shipped: no culture data, so the locale cannot reach a number.
        Assert.Contains("culture ''", report);
    }

    private static string[] Hardware()
    {
        var found = new List<string> { $"culture '{CultureInfo.CurrentCulture.Name}'" };
        if (Vector.IsHardwareAccelerated) found.Add("vector");
        if (Avx2.IsSupported) found.Add("avx2");
        if (Vector512.IsHardwareAccelerated) found.Add("vector512");
        return [.. found];
    }

    private static string[] Child(params (string Name, string Value)[] environment)
    {
        var report = Path.GetTempFileName();
        try
        {
            var start = new ProcessStartInfo(Environment.ProcessPath!) { RedirectStandardOutput = true, RedirectStandardError = true };
            start.ArgumentList.Add("-method");
            start.ArgumentList.Add(typeof(GoldenTests).FullName + "." + nameof(This_process_gives_the_committed_hash));
            start.Environment[ReportTo] = report;
            foreach (var (name, value) in environment) start.Environment[name] = value;
            using var child = Process.Start(start)!;
            var errors = child.StandardError.ReadToEndAsync();
            var words = child.StandardOutput.ReadToEnd();
            if (!child.WaitForExit(120_000))
            {
                child.Kill();
                Assert.Fail("the child did not end in two minutes");
            }

            var lines = File.ReadAllLines(report);
            Assert.True(lines.Length > 0, "the child reported nothing: " + words + errors.Result);
            return lines;
        }
        finally
        {
            File.Delete(report);
        }
    }
}
