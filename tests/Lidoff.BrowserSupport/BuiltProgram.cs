using System.Diagnostics;

namespace Lidoff.BrowserSupport;

/// <summary>A program started as a user starts it, waiting for its ready line; stopped again at the end.</summary>
public sealed class BuiltProgram : IAsyncDisposable
{
    private const string Ready = "Lidoff is ready at ";

    private readonly Process process;

    private BuiltProgram(Process process, Uri address, TimeSpan toReadyLine)
    {
        this.process = process;
        Address = address;
        ToReadyLine = toReadyLine;
    }

    /// <summary>The address it printed, with its key.</summary>
    public Uri Address { get; }

    /// <summary>Its process id.</summary>
    public int Id => process.Id;

    /// <summary>From the start of the process to the ready line.</summary>
    public TimeSpan ToReadyLine { get; }

    /// <summary>
    /// Starts <paramref name="program"/> with <paramref name="arguments"/> and returns at its ready line. Throws with what it said when
    /// it ends before, or has not come so far after a minute; nothing is left running then.
    /// </summary>
    public static async Task<BuiltProgram> Start(string program, params IReadOnlyList<string> arguments)
    {
        ArgumentNullException.ThrowIfNull(arguments);
        var start = new ProcessStartInfo(program) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        foreach (var argument in arguments) start.ArgumentList.Add(argument);
        var watch = Stopwatch.StartNew();
        var process = Process.Start(start) ?? throw new InvalidOperationException("could not start " + program);
        // Read to the end, whoever waits for it: a full pipe would stop the program.
        var said = process.StandardError.ReadToEndAsync();
        using var limit = new CancellationTokenSource(TimeSpan.FromMinutes(1));
        try
        {
            while (await process.StandardOutput.ReadLineAsync(limit.Token).ConfigureAwait(false) is { } line)
            {
                if (line.StartsWith(Ready, StringComparison.Ordinal)) return new(process, new(line[Ready.Length..]), watch.Elapsed);
            }
        }
        catch (OperationCanceledException)
        {
            process.Kill(entireProcessTree: true);
        }

        var why = program + " gave no ready line: " + await said.ConfigureAwait(false);
        process.Dispose();
        throw new InvalidOperationException(why);
    }

    /// <summary>Stops it by SIGTERM, and waits; gives its exit code. SIGINT would not do: a shell lets what it starts in the background ignore it.</summary>
    public async Task<int> Stop()
    {
        if (!process.HasExited)
        {
            using var term = Process.Start("kill", ["-TERM", process.Id.ToString(System.Globalization.CultureInfo.InvariantCulture)]);
            using var limit = new CancellationTokenSource(TimeSpan.FromSeconds(10));
            await process.WaitForExitAsync(limit.Token).ConfigureAwait(false);
        }

        return process.ExitCode;
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        try
        {
            await Stop().ConfigureAwait(false);
        }
        catch (OperationCanceledException)
        {
            process.Kill(entireProcessTree: true);
        }

        process.Dispose();
    }
}
