using System.Collections.Concurrent;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Advising;
using Lidoff.Seeing.Pictures;

namespace Lidoff.Bench.Data;

/// <summary>What pictures are worth, each looked at once while the workbench runs: its pixels never change under its hash.</summary>
public sealed class PictureWorths
{
    private readonly ConcurrentDictionary<string, Lazy<PictureWorth?>> found = new(StringComparer.Ordinal);

    /// <summary>What a picture of a dossier is worth; null where it is none of its pictures, or cannot be decoded.</summary>
    public PictureWorth? Of(IBenchData data, string dossier, string sha256)
    {
        var file = Guard.NotNull(data).View(dossier, open => open.Session.View.Live<FileAdded>().FirstOrDefault(each => each.Value.Sha256 == sha256) is { } added
            && open.Picture(sha256, added.Value.Name).TryValue(out var header) ? new Found(open.Workspace.Files.PathOf(sha256), added.Value.Name, header) : Found.None);
        if (file is null or { Header: null }) return null;
        return found.GetOrAdd(sha256, _ => new(() => PictureWorth.Of(file.Path, file.Name, file.Header).TryValue(out var worth) ? worth : null)).Value;
    }

    private sealed record Found(string Path, string Name, PictureHeader? Header)
    {
        public static Found None { get; } = new("", "", null);
    }
}
