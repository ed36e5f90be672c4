using System.Diagnostics;
using System.Globalization;
using Lidoff.Seeing.Pictures;

namespace Lidoff.Seeing.Tests.Pictures;

/// <summary>What a killed program left of thumbnails and tiles goes at the next start; what somebody writes, and what is whole, stays.</summary>
public sealed class UnfinishedFilesTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_start_sweeps_what_dead_writers_left_and_nothing_else()
    {
        using var self = Process.GetCurrentProcess();
        var longAgo = self.StartTime.ToUniversalTime().AddDays(-1);
        // No process has a number as large (kernel: at most 2^22).
        var dead = Put("thumbs/ab/x.jpg.999999999-4.part", DateTime.UtcNow);
        var deadTile = Put("tiles/cd/y.tif.999999999-0.part", DateTime.UtcNow);
        // A container gives its first process the same number at every start.
        var ofAnEarlierStart = Put(string.Create(CultureInfo.InvariantCulture, $"thumbs/ab/x.jpg.{Environment.ProcessId}-4.part"), longAgo);
        string[] stay =
        [
            Put(string.Create(CultureInfo.InvariantCulture, $"thumbs/ab/z.jpg.{Environment.ProcessId}-9.part"), DateTime.UtcNow),
            Put("thumbs/ab/x.jpg", longAgo), Put("thumbs/ab/no-writer.part", longAgo), Put("tiles/cd/y.tif", longAgo),
        ];
        UnfinishedFiles.Sweep(folder.Root);
        Assert.All([dead, deadTile, ofAnEarlierStart], path => Assert.False(File.Exists(path), path));
        Assert.All(stay, path => Assert.True(File.Exists(path), path));
    }

    [Fact]
    public void Where_there_is_no_cache_nothing_is_made()
    {
        UnfinishedFiles.Sweep(folder.File("none"));
        Assert.False(Directory.Exists(folder.File("none")));
    }

    private string Put(string name, DateTime written)
    {
        var path = folder.File(name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, "half of it");
        File.SetLastWriteTimeUtc(path, written);
        return path;
    }
}
