using Lidoff.Evidence.Working;
using Lidoff.Numbers.Failing;
using NetVips;

namespace Lidoff.Seeing.Pictures;

/// <summary>
/// Builds the pyramid of a picture once: one tiled TIFF of JPEG tiles, keyed by the picture's content hash and these settings. The picture
/// lies in it as in its file, not turned, so that it streams whatever its orientation and memory does not grow with it. Its sides are
/// filled up to whole pixels of the coarsest level, at the end where the upright picture's columns and rows end: every level begins at
/// the same edge. It is a cache: deleting it loses nothing.
/// </summary>
public static class TilePyramid
{
    // Part of the file's name: a change of these settings makes new files and leaves the old ones unused.
    private const string Settings = "t256q85v2";

    // Sides are multiples of this: a side of 65,500 px halves eight times before it fits into one tile.
    internal const int Whole = 256;

    /// <summary>Where the pyramid of a picture lies under the cache folder.</summary>
    public static string PathOf(string cacheFolder, string sha256)
    {
        Guard.That(sha256.Length == 64 && sha256.All(char.IsAsciiHexDigitLower), "a content hash, 64 lower-case hex digits");
        return Path.Combine(cacheFolder, "tiles", sha256[..2], $"{sha256}-{Settings}.tif");
    }

    /// <summary>Gives the picture's tiles, building them first where they are missing. Stopping leaves nothing half-done.</summary>
    public static Outcome<TileSource> Make(string path, string name, PictureHeader header, string sha256, string cacheFolder, IJobReport report)
    {
        var target = PathOf(cacheFolder, sha256);
        if (File.Exists(target)) return TileSource.Open(target, header);
        var unfinished = UnfinishedFiles.Of(target);
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            Build(path, name, header, unfinished, report);
            report.Stop.ThrowIfCancellationRequested();
            File.Move(unfinished, target, overwrite: true);
            return TileSource.Open(target, header);
        }
        catch (VipsException) when (report.Stop.IsCancellationRequested)
        {
            throw new OperationCanceledException(report.Stop);
        }
        catch (VipsException)
        {
            return new Fault(name, "a whole picture", PictureSentences.CutOff(name, header.Kind.Says));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return new Fault("cache", "a folder that can be written", PictureSentences.NotWritten(failure.Message));
        }
        finally
        {
            File.Delete(unfinished);
        }
    }

    private static int RoundUp(int side) => (side + Whole - 1) / Whole * Whole;

    private static void Build(string path, string name, PictureHeader header, string target, IJobReport report)
    {
        using var stored = PictureFile.Stored(path, header);
        var (width, height) = (RoundUp(stored.Width), RoundUp(stored.Height));
        using var image = stored.Embed(
            PictureTurn.ColumnsBackwards(header.Orientation) ? width - stored.Width : 0, PictureTurn.RowsBackwards(header.Orientation) ? height - stored.Height : 0,
            width, height, extend: Enums.Extend.Copy);
        image.SetProgress(new Steps(report, name), report.Stop);
        image.Tiffsave(
            target,
            compression: Enums.ForeignTiffCompression.Jpeg,
            q: 85,
            tile: true,
            tileWidth: TileSource.TileSide,
            tileHeight: TileSource.TileSide,
            pyramid: true,
            bigtiff: true,
            keep: Enums.ForeignKeep.None);
    }

    private sealed class Steps(IJobReport report, string name) : IProgress<int>
    {
        public void Report(int value) => report.Say(value, 100, SeeingSentences.MakingTiles(name));
    }
}
