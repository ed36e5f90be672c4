using System.Diagnostics;
using System.Globalization;

namespace Lidoff.Benchmarks;

/// <summary>Runs a program as a whole process and takes its wall time and its peak memory from the kernel's own account.</summary>
public static class Timed
{
    /// <summary>One run: seconds of wall time and peak resident MB. Throws when the program did not exit with <paramref name="exit"/>.</summary>
    public static (double Seconds, double PeakMb) Run(string program, IReadOnlyList<string> arguments, int exit = 0)
    {
        var start = new ProcessStartInfo(program) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        foreach (var argument in arguments) start.ArgumentList.Add(argument);
        var watch = Stopwatch.StartNew();
        using var process = Process.Start(start) ?? throw new InvalidOperationException("could not start " + program);
        var output = process.StandardOutput.ReadToEndAsync();
        var errors = process.StandardError.ReadToEndAsync();
        var peak = 0.0;
        while (!process.WaitForExit(4)) peak = Math.Max(peak, PeakMb(process.Id));
        var seconds = watch.Elapsed.TotalSeconds;
        Task.WaitAll(output, errors);
        if (process.ExitCode != exit) throw new InvalidOperationException($"{program} {string.Join(' ', arguments)} gave {process.ExitCode}: {errors.Result}");
        return (seconds, peak);
    }

    /// <summary>Median of <paramref name="runs"/> runs after one warm-up.</summary>
    public static double Median(int runs, Func<double> run)
    {
        run();
        return Enumerable.Range(0, runs).Select(_ => run()).Order().ElementAt(runs / 2);
    }

    private static double PeakMb(int id)
    {
        try
        {
            var line = File.ReadLines($"/proc/{id}/status").FirstOrDefault(each => each.StartsWith("VmHWM:", StringComparison.Ordinal));
            return line is null ? 0 : double.Parse(line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[1], CultureInfo.InvariantCulture) / 1024;
        }
        catch (IOException)
        {
            return 0; // it ended between two looks
        }
    }
}
