using System.Globalization;
using Lidoff.Evidence.Pictures;
using Lidoff.Evidence.Registering;
using Lidoff.Numbers.Failing;
using NetVips;

namespace Lidoff.Seeing.Pictures;

/// <summary>
/// A picture on disk: its header under caps, whether it decodes to the end, and its upright pixels. Hostile files give sentences.
/// </summary>
public static class PictureFile
{
    private static readonly string[] Readable = ["image/jpeg", "image/png", "image/tiff", "image/webp", "image/gif", "image/avif", "image/heic"];
    private static readonly FileRecognisers Recognisers = FileRecognisers.Found();

    /// <summary>Reads the header; pixels stay undecoded, so this is quick for any size.</summary>
    /// <param name="path">The file.</param>
    /// <param name="name">Its name as people know it, for the sentences; hostile text.</param>
    /// <param name="limits">Caps; the usual ones when left out.</param>
    public static Outcome<PictureHeader> Read(string path, string name, PictureLimits? limits = null)
    {
        RecognisedFile kind;
        try
        {
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read);
            kind = Recognisers.Recognise(stream, Path.GetFileName(name));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return File.Exists(path)
                ? new Fault(name, "a file that can be read", PictureSentences.Unreadable(name, failure.Message))
                : new Fault(name, "a picture", SeeingSentences.UnknownImage(name));
        }

        if (!Readable.Contains(kind.MediaType)) return new Fault(name, "JPEG, PNG, TIFF, WebP, GIF, AVIF or HEIC", PictureSentences.NoPicture(name, kind.Says));
        try
        {
            if (kind.MediaType == "image/heic") return Heic(path, kind, name, limits ?? PictureLimits.Usual);
            using var image = Vips.Open(path, kind.MediaType, sequential: true);
            return Within(Header(image, kind), name, limits ?? PictureLimits.Usual);
        }
        catch (VipsException)
        {
            return new Fault(name, "a whole picture", PictureSentences.Broken(name, kind.Says));
        }
        catch (Exception missing) when (missing is TypeInitializationException or DllNotFoundException or BadImageFormatException)
        {
            return new Fault(name, "a machine with the decoder for HEIC", PictureSentences.NoHeicDecoder(name));
        }
    }

    /// <summary>Reads the header and decodes every pixel once in bounded memory: a cut-off file is found out here.</summary>
    public static Outcome<PictureHeader> Check(string path, string name, PictureLimits? limits = null)
    {
        var header = Read(path, name, limits);
        if (!header.Ok) return header;
        // A JPEG whose end mark comes before its last row is not cut off for its decoder, which only warns and fills up with grey.
        if (header.Value.Kind.MediaType == "image/jpeg" && Decodes(path, header.Value, Enums.FailOn.Warning)) return header;
        if (!Decodes(path, header.Value, Enums.FailOn.Truncated)) return new Fault(name, "a whole picture", PictureSentences.CutOff(name, header.Value.Kind.Says));
        return header.Value.Kind.MediaType == "image/jpeg" ? header.Value with { Remarks = [.. header.Value.Remarks, PictureSentences.Damaged()] } : header;
    }

    /// <summary>What is read off a picture's pixels; one that breaks off meanwhile fails with a sentence.</summary>
    internal static Outcome<T> Whole<T>(string name, PictureHeader header, Func<Outcome<T>> read)
    {
        try
        {
            return read();
        }
        catch (VipsException)
        {
            return new Fault(name, "a whole picture", PictureSentences.CutOff(name, header.Kind.Says));
        }
    }

    private static bool Decodes(string path, PictureHeader header, Enums.FailOn fail)
    {
        try
        {
            using var image = Vips.Open(path, header.Kind.MediaType, sequential: true, fail);
            _ = image.Avg();
            return true;
        }
        catch (VipsException)
        {
            return false;
        }
    }

    /// <summary>The upright picture, 8 bits, grey or red-green-blue. Turning it needs all rows; the library keeps a picture over 100 MB in a temporary file then, not in memory.</summary>
    internal static Image Upright(string path, PictureHeader header) =>
        header.Orientation == 1 ? Stored(path, header) : PictureTurn.Upright(Stored(path, header, sequential: header.Orientation == 2), header.Orientation);

    /// <summary>The picture as it lies in its file, not turned, 8 bits, grey or red-green-blue, decoded as it is read.</summary>
    internal static Image Stored(string path, PictureHeader header, int shrink = 1, bool sequential = true)
    {
        // Strict: where a file was cut off the library would fill up with rows it had read before, a board that is not there.
        var image = Vips.Open(path, header.Kind.MediaType, sequential, Enums.FailOn.Truncated, shrink);
        if (header.Colour is PictureColour.Cmyk or PictureColour.Other || header.Bits > 8)
        {
            image = image.Colourspace(header.Colour == PictureColour.Grey ? Enums.Interpretation.Bw : Enums.Interpretation.Srgb);
        }

        if (image.HasAlpha()) image = image.Flatten(background: [255.0]);
        return image.Format == Enums.BandFormat.Uchar ? image : image.Cast(Enums.BandFormat.Uchar);
    }

    /// <summary>
    /// By how much a decoder can shrink a picture while it reads it (1, 2, 4 or 8) and leave its long side at least <paramref name="leastSide"/> px:
    /// that saves time and memory. Only JPEG's can.
    /// </summary>
    internal static int Shrinking(PictureHeader header, double leastSide)
    {
        var (shrink, side) = (1, Math.Max(header.Width, header.Height));
        if (header.Kind.MediaType == "image/jpeg") while (shrink < 8 && side / (shrink * 2.0) >= leastSide) shrink *= 2;
        return shrink;
    }

    /// <summary>A picture that was made small, upright and in memory: all of its rows fit, so it is turned now and not as it streams. The caller owns it.</summary>
    internal static Image SmallUpright(Image small, PictureHeader header)
    {
        var held = small.CopyMemory();
        if (header.Orientation == 1) return held;
        using (held) return PictureTurn.Upright(held, header.Orientation).CopyMemory();
    }

    /// <summary>A HEIC by its header; its decoder hands it out upright, so no orientation is left to respect.</summary>
    private static Outcome<PictureHeader> Heic(string path, RecognisedFile kind, string name, PictureLimits limits)
    {
        var (width, height) = HeicDecoder.Size(path);
        var header = new PictureHeader { Kind = kind, StoredWidth = width, StoredHeight = height, Orientation = 1, Bands = 3, Bits = 8, Colour = PictureColour.Rgb, Pages = 1, Remarks = [] };
        return Within(header, name, limits with { MostPixels = Math.Min(limits.MostPixels, HeicDecoder.MostPixels) });
    }

    private static PictureHeader Header(Image image, RecognisedFile kind)
    {
        // The library drops an orientation that does not exist; the tag as it was written stands among the Exif texts.
        var tag = ExifNumber(image, "exif-ifd0-Orientation") ?? Vips.Whole(image, "orientation");
        var bits = image.Format switch
        {
            Enums.BandFormat.Uchar or Enums.BandFormat.Char => 8,
            Enums.BandFormat.Ushort or Enums.BandFormat.Short => 16,
            Enums.BandFormat.Double or Enums.BandFormat.Complex => 64,
            _ => 32,
        };
        var colour = image.Interpretation switch
        {
            Enums.Interpretation.Cmyk => PictureColour.Cmyk,
            Enums.Interpretation.Bw or Enums.Interpretation.Grey16 => PictureColour.Grey,
            Enums.Interpretation.Srgb or Enums.Interpretation.Rgb or Enums.Interpretation.Rgb16 => PictureColour.Rgb,
            _ => PictureColour.Other,
        };
        var pages = Math.Max(1, Vips.Whole(image, "n-pages") ?? 1);
        var remarks = new List<string>();
        if (pages > 1) remarks.Add(PictureSentences.ManyFrames(pages));
        if (bits > 8) remarks.Add(PictureSentences.DeepColours(bits));
        if (colour == PictureColour.Cmyk) remarks.Add(PictureSentences.PrintColours());
        if (tag is < 1 or > 8) remarks.Add(PictureSentences.ImpossibleOrientation(tag.Value));
        var camera = CameraSize(image);
        // Of moving pictures some programs write the size of all frames together.
        if (pages == 1 && camera is { } wrote && !SameSize(wrote, image)) remarks.Add(PictureSentences.OtherSize(wrote.Width, wrote.Height, image.Width, image.Height));
        return new()
        {
            Kind = kind,
            StoredWidth = image.Width,
            StoredHeight = image.Height,
            Orientation = ExifOrientation.Known(tag),
            Bands = image.Bands,
            Bits = bits,
            Colour = colour,
            Pages = pages,
            InPasses = Vips.Whole(image, "jpeg-multiscan") is > 0 || Vips.Whole(image, "interlaced") is > 0,
            BytesAPixelInPasses = kind.MediaType == "image/jpeg" && Vips.Whole(image, "jpeg-multiscan") is > 0 ? BytesAPixel(image) : 0,
            Remarks = remarks,
            FocalLongSides = camera is { } whole ? FocalLongSides(image, whole) : null,
            Worked = camera is not { } size || !SameSize(size, image) || WorkedOn(image),
        };
    }

    // Coefficients of two bytes: one for each pixel of each channel, fewer where colour has fewer pixels than brightness (ITU-T T.81, A.1.1).
    private static int BytesAPixel(Image image) => image.Bands == 1 ? 2 : (image.GetTypeOf("jpeg-chroma-subsample") != IntPtr.Zero ? image.Get("jpeg-chroma-subsample") as string : null) switch
    {
        "4:2:0" or "4:1:1" => 3,
        "4:2:2" or "4:4:0" => 4,
        _ => 2 * image.Bands,
    };

    /// <summary>
    /// The focal length as if on 35 mm film (Exif 2.32, tag 0xA405: the field is that of a 36 × 24 mm frame, taken over the diagonal)
    /// in long sides of the picture that the camera wrote; null where it is missing or no lens has it.
    /// </summary>
    private static double? FocalLongSides(Image image, (int Width, int Height) camera)
    {
        const double filmDiagonal = 43.267;
        if (ExifNumber(image, "exif-ifd2-FocalLengthIn35mmFilm") is not (>= 8 and <= 600 and var film)) return null;
        var (longSide, diagonal) = (Math.Max(camera.Width, camera.Height), Math.Sqrt(((double)camera.Width * camera.Width) + ((double)camera.Height * camera.Height)));
        return film / filmDiagonal * diagonal / longSide;
    }

    /// <summary>
    /// Whether a program worked on the picture after the camera: many write its new size into Exif, so that nothing else tells. A camera writes the time of the
    /// file (tag 0x0132) as that of the picture (0x9003), and none that knows the focal length of 35 mm film (Exif 2.2, 2002) takes fewer than two megapixels (from memory).
    /// </summary>
    private static bool WorkedOn(Image image)
    {
        const long leastPixels = 1_900_000;
        if ((long)image.Width * image.Height < leastPixels) return true;
        return ExifText(image, "exif-ifd0-DateTime") is { } written && ExifText(image, "exif-ifd2-DateTimeOriginal") is { } taken && written != taken;
    }

    /// <summary>A time of Exif to the minute.</summary>
    private static string? ExifText(Image image, string field) =>
        image.GetTypeOf(field) != IntPtr.Zero && image.Get(field) is string { Length: >= 16 } text ? text[..16] : null;

    /// <summary>The size the camera wrote into Exif (tags 0xA002 and 0xA003).</summary>
    private static (int Width, int Height)? CameraSize(Image image) =>
        ExifNumber(image, "exif-ifd2-PixelXDimension") is > 0 and { } width && ExifNumber(image, "exif-ifd2-PixelYDimension") is > 0 and { } height ? (width, height) : null;

    /// <summary>A number of Exif, which the library gives as a text such as "4032 (4032, Short, …)".</summary>
    private static int? ExifNumber(Image image, string field) =>
        image.GetTypeOf(field) != IntPtr.Zero && image.Get(field) is string text && int.TryParse(text.Split(' ')[0], NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static bool SameSize((int Width, int Height) camera, Image image) =>
        camera == (image.Width, image.Height) || camera == (image.Height, image.Width);

    private static Outcome<PictureHeader> Within(PictureHeader header, string name, PictureLimits limits)
    {
        var (width, height) = (header.StoredWidth, header.StoredHeight);
        if ((long)width * height > limits.MostPixels || Math.Max(width, height) > limits.LongestSide)
        {
            return new Fault(
                name,
                string.Create(CultureInfo.InvariantCulture, $"at most {limits.MostPixels / 1_000_000} megapixels and {limits.LongestSide} pixels a side"),
                PictureSentences.TooLarge(name, width, height, limits.MostPixels, limits.LongestSide));
        }

        // A JPEG in passes ends each pixel in the last one: all of it stays in memory until then.
        var bytes = (long)width * height * header.BytesAPixelInPasses;
        return bytes > limits.MostBytesInPasses
            ? new Fault(name, string.Create(CultureInfo.InvariantCulture, $"at most {limits.MostBytesInPasses / 1_000_000} MB in passes"), PictureSentences.TooLargeInPasses(name, width, height, bytes, limits.MostBytesInPasses))
            : header;
    }
}
