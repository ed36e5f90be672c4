using Lidoff.TestSupport;

namespace Lidoff.Evidence.Tests.Store;

/// <summary>The failing disk itself: it must lose what a careless writer would lose, or the crash tests prove nothing.</summary>
public class FaultyFileLayerTests
{
    private static FaultyFileLayer Disk()
    {
        var disk = new FaultyFileLayer();
        disk.CreateFolder("/w");
        disk.SyncFolder("/");
        return disk;
    }

    private static string? Content(FaultyFileLayer disk, string path)
    {
        if (!disk.Exists(path)) return null;
        using var reader = new StreamReader(disk.OpenRead(path));
        return reader.ReadToEnd();
    }

    private static void Write(FaultyFileLayer disk, string path, bool sync)
    {
        using var stream = disk.CreateNew(path);
        stream.Write("content"u8);
        if (sync) disk.Sync(stream);
    }

    [Fact]
    public void Renamed_before_it_was_synced_a_file_comes_back_empty()
    {
        var disk = Disk();
        Write(disk, "/w/t", sync: false);
        disk.Rename("/w/t", "/w/a");
        disk.SyncFolder("/w");
        Assert.Equal("", Content(disk.Restarted(AfterCut.UnsyncedGone), "/w/a"));
    }

    [Fact]
    public void Without_a_synced_folder_the_name_is_gone()
    {
        var disk = Disk();
        Write(disk, "/w/t", sync: true);
        disk.Rename("/w/t", "/w/a");
        Assert.Null(Content(disk.Restarted(AfterCut.UnsyncedGone), "/w/a"));
        Assert.Equal("content", Content(disk.Restarted(AfterCut.NamesKeptBytesGone), "/w/a"));
    }

    [Fact]
    public void A_folder_nobody_synced_takes_its_files_with_it()
    {
        var disk = Disk();
        disk.CreateFolder("/w/ab");
        Write(disk, "/w/ab/t", sync: true);
        disk.SyncFolder("/w/ab");
        Assert.Null(Content(disk.Restarted(AfterCut.UnsyncedGone), "/w/ab/t"));
    }

    [Fact]
    public void In_the_right_order_everything_comes_back()
    {
        var disk = Disk();
        Write(disk, "/w/t", sync: true);
        disk.Rename("/w/t", "/w/a");
        disk.SyncFolder("/w");
        Assert.Equal("content", Content(disk.Restarted(AfterCut.UnsyncedGone), "/w/a"));
    }
}
