using System.Diagnostics;
using Microsoft.Playwright;

namespace Lidoff.Browser.Tests.Fixtures;

/// <summary>
/// How long a test waits for what must come. Long, since a machine may be busy with other work and the wait costs nothing where all is
/// well.
/// </summary>
public static class Patience
{
    /// <summary>The longest wait, ms.</summary>
    public const int Ms = 40_000;

    /// <summary>Lets the driver's own waits last as long.</summary>
    public static void Teach() => Assertions.SetDefaultExpectTimeout(Ms);

    /// <summary>Waits until something holds; fails with what was waited for.</summary>
    public static async Task Until(string what, Func<Task<bool>> holds)
    {
        ArgumentNullException.ThrowIfNull(holds);
        var watch = Stopwatch.StartNew();
        while (!await holds())
        {
            if (watch.ElapsedMilliseconds > Ms) Assert.Fail(FormattableString.Invariant($"not within {Ms / 1000} s: {what}"));
            await Task.Delay(50);
        }
    }
}
