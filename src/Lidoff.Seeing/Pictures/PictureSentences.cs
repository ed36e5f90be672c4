using System.Globalization;

namespace Lidoff.Seeing.Pictures;

/// <summary>What a person reads about a picture's file.</summary>
public static class PictureSentences
{
    /// <summary>The file is there and the system will not give it.</summary>
    public static string Unreadable(string name, string why) => $"{Quoted(name)} cannot be read: {why}";

    /// <summary>Not a picture at all.</summary>
    public static string NoPicture(string name, string says) => $"{Quoted(name)} is {says}, not a picture Lidoff can open (JPEG, PNG, TIFF, WebP, GIF, AVIF, HEIC).";

    /// <summary>A HEIC on a machine for which its decoder was not built.</summary>
    public static string NoHeicDecoder(string name) => $"{Quoted(name)} is a HEIC picture, and this machine has no decoder for it: let the phone save JPEG, or convert it first. The file is kept as it is.";

    /// <summary>The header does not hold.</summary>
    public static string Broken(string name, string says) => $"{Quoted(name)} begins like {says}, but its header cannot be read.";

    /// <summary>The pixels end early.</summary>
    public static string CutOff(string name, string says) => $"{Quoted(name)} is {says} whose pixels cannot be read to the end: cut off or damaged. Copy it again from where it came.";

    /// <summary>Decoded with warnings: not cut off, and not sound.</summary>
    public static string Damaged() => "The picture's data has errors or does not fill the size that its header claims; what could not be read is shown grey.";

    /// <summary>Over the caps.</summary>
    public static string TooLarge(string name, int width, int height, long mostPixels, int longestSide) => string.Create(
        CultureInfo.InvariantCulture,
        $"{Quoted(name)} would have {width} × {height} pixels ({(long)width * height / 1_000_000} megapixels); Lidoff opens at most {mostPixels / 1_000_000} megapixels and {longestSide} pixels a side.");

    /// <summary>A progressive JPEG over its own cap.</summary>
    public static string TooLargeInPasses(string name, int width, int height, long bytes, long most) => string.Create(
        CultureInfo.InvariantCulture,
        $"{Quoted(name)} has {width} × {height} pixels in passes (a progressive JPEG), which must be held in memory as a whole, {bytes / 1_000_000} MB; Lidoff opens such ones up to {most / 1_000_000} MB. Save it once more as an ordinary (baseline) JPEG, or as TIFF or PNG. The file is kept as it is.");

    /// <summary>More than one frame.</summary>
    public static string ManyFrames(int pages) => string.Create(CultureInfo.InvariantCulture, $"The file holds {pages} frames; the first is used.");

    /// <summary>More than 8 bits a channel.</summary>
    public static string DeepColours(int bits) => string.Create(CultureInfo.InvariantCulture, $"The picture has {bits} bits a channel; it is shown with 8 and kept as it is.");

    /// <summary>CMYK.</summary>
    public static string PrintColours() => "The picture is in print colours (CMYK); they are converted for the screen and kept as they are.";

    /// <summary>An orientation that does not exist.</summary>
    public static string ImpossibleOrientation(int tag) => string.Create(CultureInfo.InvariantCulture, $"The picture's orientation tag is {tag}, which does not exist (1 to 8 do); it is shown as stored.");

    /// <summary>The size in Exif is another.</summary>
    public static string OtherSize(int cameraWidth, int cameraHeight, int width, int height) => string.Create(
        CultureInfo.InvariantCulture,
        $"The camera wrote {cameraWidth} × {cameraHeight} pixels and the file holds {width} × {height}: it was cropped or resized since, so a scale from the camera's data would not fit.");

    /// <summary>A tile that does not exist.</summary>
    public static string NoTile(int level, int column, int row) => string.Create(CultureInfo.InvariantCulture, $"There is no tile {column}, {row} at level {level} of this picture.");

    /// <summary>The disk did not take a derived file.</summary>
    public static string NotWritten(string why) => "The picture's tiles could not be written: " + why;

    private static string Quoted(string name) => SeeingSentences.Quoted(name);

    /// <summary>A region that does not overlap the picture.</summary>
    public static string CropOutside(string name) => $"{SeeingSentences.Quoted(name)} shows nothing there: the place lies outside of the picture.";
}
