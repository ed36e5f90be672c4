using NetVips;

namespace Lidoff.Seeing.Pictures;

/// <summary>
/// The one place where the picture library is opened and set up: no cache (a file under a name may change; memory is bounded),
/// and no loaders that its makers call unsafe for hostile files.
/// </summary>
internal static class Vips
{
    private static readonly bool Ready = SetUp();

    /// <summary>
    /// Opens by the loader that fits the recognised content. Never by file name alone: names are hostile, and the library reads
    /// options in square brackets out of them.
    /// </summary>
    public static Image Open(string path, string mediaType, bool sequential, Enums.FailOn fail = Enums.FailOn.None, int shrink = 1)
    {
        _ = Ready;
        var access = sequential ? Enums.Access.Sequential : Enums.Access.Random;
        return mediaType switch
        {
            "image/jpeg" => Image.Jpegload(path, shrink: shrink, access: access, failOn: fail),
            "image/png" => Image.Pngload(path, access: access, failOn: fail),
            "image/tiff" => Image.Tiffload(path, access: access, failOn: fail),
            "image/webp" => Image.Webpload(path, access: access, failOn: fail),
            "image/gif" => Image.Gifload(path, access: access, failOn: fail),
            "image/heic" => HeicDecoder.Open(path),
            _ => Image.Heifload(path, access: access, failOn: fail),
        };
    }

    /// <summary>A number of the header, or null.</summary>
    public static int? Whole(Image image, string field) =>
        image.GetTypeOf(field) != IntPtr.Zero && image.Get(field) is int value ? value : null;

    /// <summary>Sets the library up, once.</summary>
    public static void Start() => _ = Ready;

    private static bool SetUp()
    {
        Cache.Max = 0;
        // Its warnings about damaged files would mix with our sentences on the error stream; the sentences say it already.
        Log.SetLogHandler("VIPS", Enums.LogLevelFlags.Warning, (_, _, _) => { });
        NetVips.NetVips.BlockUntrusted = true;
        return true;
    }
}
