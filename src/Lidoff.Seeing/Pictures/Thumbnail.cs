using System.Globalization;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
using NetVips;

namespace Lidoff.Seeing.Pictures;

/// <summary>Small upright pictures, made in bounded memory: a JPEG is shrunk while it is decoded, anything else as it streams.</summary>
public static class Thumbnail
{
    // Part of a kept one's name: a change of what is done here makes new files and leaves the old ones unused.
    private const string Settings = "q85v1";

    /// <summary>A JPEG without any metadata, fitting into <paramref name="longestSide"/> px (never enlarged).</summary>
    public static Outcome<byte[]> Jpeg(string path, string name, PictureHeader header, int longestSide)
    {
        Guard.That(longestSide > 0, "a side above zero");
        return PictureFile.Whole<byte[]>(name, header, () =>
        {
            // One and a half times the wanted size is kept for a clean reduction.
            using var image = PictureFile.Stored(path, header, PictureFile.Shrinking(header, 1.5 * longestSide));
            using var small = image.ThumbnailImage(longestSide, height: longestSide, size: Enums.Size.Down, noRotate: true);
            using var upright = PictureFile.SmallUpright(small, header);
            return upright.JpegsaveBuffer(q: 85, keep: Enums.ForeignKeep.None);
        });
    }

    /// <summary>The same, kept in the cache folder under the picture's content hash, so that a large one is decoded once. The cache may be emptied, and may be full.</summary>
    public static Outcome<byte[]> Kept(string path, string name, PictureHeader header, int longestSide, string sha256, string cacheFolder)
    {
        var kept = KeptAt(sha256, longestSide, cacheFolder);
        try
        {
            if (File.Exists(kept)) return File.ReadAllBytes(kept);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            // A cache that cannot be read is no cache.
        }

        var made = Jpeg(path, name, header, longestSide);
        if (made.Ok) Keep(kept, made.Value);
        return made;
    }

    /// <summary>Whether <see cref="Kept"/> has it already.</summary>
    public static bool IsKept(string sha256, int longestSide, string cacheFolder) => File.Exists(KeptAt(sha256, longestSide, cacheFolder));

    private static string KeptAt(string sha256, int longestSide, string cacheFolder)
    {
        Guard.That(EntryId.Fits(sha256), "a content hash, 64 lower-case hex digits");
        return Path.Combine(cacheFolder, "thumbs", sha256[..2], string.Create(CultureInfo.InvariantCulture, $"{sha256}-{longestSide}-{Settings}.jpg"));
    }

    private static void Keep(string kept, byte[] jpeg)
    {
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(kept)!);
            var beside = UnfinishedFiles.Of(kept, Environment.CurrentManagedThreadId);
            File.WriteAllBytes(beside, jpeg);
            File.Move(beside, kept, overwrite: true);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            // A full disk keeps nobody from looking.
        }
    }
}
