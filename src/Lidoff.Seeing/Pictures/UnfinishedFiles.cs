using System.Diagnostics;
using System.Globalization;

namespace Lidoff.Seeing.Pictures;

/// <summary>
/// Files of the cache while they are written: they carry their writer's process number and end in <c>.part</c>, and get their own name when they
/// are whole. What a killed writer left is swept; what a living one writes stays.
/// </summary>
public static class UnfinishedFiles
{
    private const string Part = ".part";

    // A process writes nothing before it started, and the disk's clock is no finer than this.
    private static readonly TimeSpan Slack = TimeSpan.FromSeconds(3);

    /// <summary>The name under which this process writes a file; <paramref name="piece"/> keeps its threads apart.</summary>
    internal static string Of(string target, int piece = 0) => string.Create(CultureInfo.InvariantCulture, $"{target}.{Environment.ProcessId}-{piece}{Part}");

    /// <summary>Sweeps the whole cache folder, once at a start. What cannot be removed is in nobody's way.</summary>
    public static void Sweep(string cacheFolder)
    {
        try
        {
            if (!Directory.Exists(cacheFolder)) return;
            foreach (var left in Directory.EnumerateFiles(cacheFolder, "*" + Part, new EnumerationOptions { RecurseSubdirectories = true, MaxRecursionDepth = 2, AttributesToSkip = FileAttributes.ReparsePoint }))
            {
                if (Writer(left) is { } process && !Writes(process, left)) File.Delete(left);
            }
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            // The next start tries again.
        }
    }

    private static int? Writer(string path)
    {
        var name = Path.GetFileName(path)[..^Part.Length];
        var number = name[(name.LastIndexOf('.') + 1)..].Split('-')[0];
        return int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var process) ? process : null;
    }

    // Numbers are used again, and in a container every start has the same one: a file older than the process is not its own.
    private static bool Writes(int process, string path)
    {
        try
        {
            using var found = Process.GetProcessById(process);
            return File.GetLastWriteTimeUtc(path) >= found.StartTime.ToUniversalTime() - Slack;
        }
        catch (ArgumentException)
        {
            return false;
        }
        catch (Exception hidden) when (hidden is InvalidOperationException or System.ComponentModel.Win32Exception)
        {
            // It runs and does not say since when: in doubt the file stays.
            return true;
        }
    }
}
