using System.Diagnostics;
using System.Globalization;
using Lidoff.BrowserSupport;

namespace Lidoff.Browser.Tests.Fixtures;

/// <summary>
/// The workbench as a program of its own on a disk of a few MB that can be filled and freed. The disk lives in memory, is seen by that
/// program alone, and goes with it.
/// </summary>
public sealed class SmallDisk : IAsyncDisposable
{
    // "$1" is where the disk is put, the rest is the program.
    private const string Mount = "mount -t tmpfs -o size=6m,mode=700 tmpfs \"$1\" && shift && exec \"$@\"";

    private readonly BuiltProgram program;
    private readonly string filler;

    private SmallDisk(BuiltProgram program, string folder)
    {
        this.program = program;
        Bench = LiveBench.Elsewhere(program.Address, folder);
        // The program's own view of the disk.
        filler = Path.Combine("/proc", program.Id.ToString(CultureInfo.InvariantCulture), "root", folder.TrimStart('/'), "filler");
    }

    /// <summary>The bench on it.</summary>
    public LiveBench Bench { get; }

    /// <summary>Starts one on an empty folder; null where this machine lets nobody mount a disk of their own.</summary>
    public static async Task<SmallDisk?> Start(string folder)
    {
        Directory.CreateDirectory(folder);
        foreach (var own in new[] { "-rm", "-m" })
        {
            if (!await Mounts(own, folder)) continue;
            return new(await BuiltProgram.Start("unshare", own, "sh", "-c", Mount, "sh", folder, Path.Combine(AppContext.BaseDirectory, "lidoff"), "bench", "--workspace", folder, "--port", "0", "--no-browser"), folder);
        }

        return null;
    }

    /// <summary>Leaves no byte free.</summary>
    public void Fill()
    {
        using var file = new FileStream(filler, FileMode.Append, FileAccess.Write, FileShare.None, 0);
        foreach (var piece in new[] { 1 << 16, 4096, 1 })
        {
            try
            {
                while (true) file.Write(new byte[piece]);
            }
            catch (IOException)
            {
                // Full for pieces of this size.
            }
        }
    }

    /// <summary>Makes room again.</summary>
    public void Free() => File.Delete(filler);

    public async ValueTask DisposeAsync()
    {
        await Bench.DisposeAsync();
        await program.DisposeAsync();
    }

    private static async Task<bool> Mounts(string own, string folder)
    {
        using var probe = Process.Start(new ProcessStartInfo("unshare", [own, "sh", "-c", Mount, "sh", folder, "true"]) { RedirectStandardError = true, RedirectStandardOutput = true });
        await probe!.WaitForExitAsync();
        return probe.ExitCode == 0;
    }
}
