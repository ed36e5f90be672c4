using System.Security.Cryptography;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Watching;

/// <summary>
/// Watches one folder that an instrument writes to, on this machine, a card or a share, by looking at it again and again: what a
/// share's other side writes is not notified. A file is taken once two looks in a row found it unchanged, in the order of names, and
/// never twice. Folders inside, links, hidden and unfinished files are left alone; nothing in the folder is ever changed.
/// Not safe for use from several threads; <c>WatchDesk</c> is.
/// </summary>
/// <param name="folder">The folder, as an absolute path.</param>
/// <param name="known">True for a hash (64 hex digits) whose content need not be taken.</param>
/// <param name="take">Takes a file's content under its name; faults refuse it.</param>
/// <param name="mostBytes">Longest file that is taken, bytes. Default 2 GiB.</param>
public sealed class FolderWatch(
    string folder, Func<string, bool> known, Func<Stream, string, CancellationToken, Task<Outcome<string>>> take, long mostBytes = FolderWatch.UsualCap)
{
    /// <summary>Longest file taken unless said otherwise, bytes.</summary>
    public const long UsualCap = 2L << 30;

    // What copying tools, browsers and editors call a file that is not finished or not meant to stay.
    private static readonly string[] Unfinished = [".tmp", ".temp", ".part", ".partial", ".crdownload", ".download", ".filepart", ".swp", "~"];

    private readonly HashSet<Seen> done = [];
    private readonly HashSet<string> taken = new(StringComparer.Ordinal);
    private Dictionary<string, Seen> before = new(StringComparer.Ordinal);
    private bool gone;

    /// <summary>Files that were seen and are not settled yet: still being written, or locked.</summary>
    public int Waiting { get; private set; }

    /// <summary>Looks once and takes what is ready. What it tells is complete: nothing is said twice.</summary>
    public async Task<IReadOnlyList<WatchEvent>> Look(CancellationToken stop = default)
    {
        var events = new List<WatchEvent>();
        if (Present() is not { } present)
        {
            // Sizes from before a card was pulled prove nothing about the card that comes back.
            before.Clear();
            Waiting = 0;
            if (!gone) events.Add(new(WatchSight.Gone, "", "", WatchSentences.Gone(folder)));
            gone = true;
            return events;
        }

        if (gone) events.Add(new(WatchSight.Back, "", "", WatchSentences.Back(folder)));
        gone = false;
        var waiting = 0;
        foreach (var file in present.Where(file => !done.Contains(file)))
        {
            stop.ThrowIfCancellationRequested();
            var settled = before.TryGetValue(file.Name, out var last) && last == file ? await Settle(file, stop).ConfigureAwait(false) : null;
            if (settled is null) waiting++;
            else events.Add(settled);
        }

        before = present.ToDictionary(file => file.Name, StringComparer.Ordinal);
        Waiting = waiting;
        return events;
    }

    /// <summary>Looks every <paramref name="every"/> until stopped, telling each event as it comes.</summary>
    public async Task Run(TimeProvider time, TimeSpan every, Action<WatchEvent> tell, CancellationToken stop)
    {
        while (!stop.IsCancellationRequested)
        {
            try
            {
                foreach (var each in await Look(stop).ConfigureAwait(false)) tell(each);
                await Task.Delay(every, time, stop).ConfigureAwait(false);
            }
            catch (OperationCanceledException) when (stop.IsCancellationRequested)
            {
                return;
            }
        }
    }

    /// <summary>The plain files of the folder, by name; null when it cannot be read.</summary>
    private List<Seen>? Present()
    {
        try
        {
            var options = new EnumerationOptions { AttributesToSkip = FileAttributes.Hidden | FileAttributes.System | FileAttributes.Directory | FileAttributes.ReparsePoint, IgnoreInaccessible = false, RecurseSubdirectories = false };
            return
            [
                .. new DirectoryInfo(folder).EnumerateFiles("*", options)
                    .Where(file => file.LinkTarget is null && !file.Name.StartsWith('.') && !file.Name.StartsWith("~$", StringComparison.Ordinal) && !Unfinished.Any(end => file.Name.EndsWith(end, StringComparison.OrdinalIgnoreCase)))
                    .Select(file => new Seen(file.Name, file.Length, file.LastWriteTimeUtc))
                    .OrderBy(file => file.Name, StringComparer.Ordinal),
            ];
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException or System.Security.SecurityException)
        {
            return null;
        }
    }

    /// <summary>Takes or refuses a file that has not changed; null when it has to wait.</summary>
    private async Task<WatchEvent?> Settle(Seen file, CancellationToken stop)
    {
        // Not opened: a pipe has no length either, and opening one would wait for its other end.
        if (file.Bytes == 0) return Refuse(file, WatchSentences.Empty(file.Name));
        if (file.Bytes > mostBytes) return Refuse(file, WatchSentences.TooLarge(file.Name, file.Bytes, mostBytes));
        try
        {
            var path = Path.Combine(folder, file.Name);
            using var content = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read, 1 << 16);
            // A link or another file may have been put in its place since it was listed.
            if (content.Length != file.Bytes || !Same(path, file)) return null;
            var hash = Convert.ToHexStringLower(await SHA256.HashDataAsync(content, stop).ConfigureAwait(false));
            if (content.Length != file.Bytes || !Same(path, file)) return null;
            if (taken.Contains(hash) || known(hash))
            {
                done.Add(file);
                return new(WatchSight.Known, file.Name, hash, WatchSentences.Known(file.Name));
            }

            content.Position = 0;
            var outcome = await take(content, file.Name, stop).ConfigureAwait(false);
            if (!outcome.TryValue(out var stored)) return Refuse(file, string.Join(' ', outcome.Faults.Select(fault => fault.Say)));
            taken.Add(hash);
            taken.Add(stored);
            done.Add(file);
            return new(WatchSight.Taken, file.Name, stored, WatchSentences.Taken(file.Name));
        }
        catch (UnauthorizedAccessException)
        {
            return Refuse(file, WatchSentences.Forbidden(file.Name));
        }
        catch (IOException)
        {
            // Locked by its writer, or the card was pulled while it was read: the next look tells.
            return null;
        }
    }

    private static bool Same(string path, Seen file)
    {
        var now = new FileInfo(path);
        return now.Exists && now.LinkTarget is null && now.Length == file.Bytes && now.LastWriteTimeUtc == file.Written;
    }

    private WatchEvent Refuse(Seen file, string say)
    {
        done.Add(file);
        return new(WatchSight.Refused, file.Name, "", say);
    }

    /// <summary>A file as one look found it.</summary>
    private sealed record Seen(string Name, long Bytes, DateTime Written);
}
