using Lidoff.Evidence.Pictures;
using Lidoff.Evidence.Registering;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Pictures;

/// <summary>What a picture's file says of itself before a single pixel is decoded.</summary>
public sealed record PictureHeader
{
    /// <summary>What the content was recognised as.</summary>
    public required RecognisedFile Kind { get; init; }

    /// <summary>Width as stored, px.</summary>
    public required int StoredWidth { get; init; }

    /// <summary>Height as stored, px.</summary>
    public required int StoredHeight { get; init; }

    /// <summary>Exif orientation, 1 to 8; 1 where there is none or it is impossible.</summary>
    public required int Orientation { get; init; }

    /// <summary>Channels, an alpha channel included.</summary>
    public required int Bands { get; init; }

    /// <summary>Bits per channel.</summary>
    public required int Bits { get; init; }

    /// <summary>Colour space.</summary>
    public required PictureColour Colour { get; init; }

    /// <summary>Frames or pages; the first is used.</summary>
    public required int Pages { get; init; }

    /// <summary>True where the file holds the whole picture coarsely first and then ever finer (a progressive JPEG, an interlaced PNG).</summary>
    public bool InPasses { get; init; }

    /// <summary>Bytes that the decoder of a JPEG in passes holds for each pixel until the last one: two a coefficient; 0 for any other file.</summary>
    public int BytesAPixelInPasses { get; init; }

    /// <summary>Sentences about what is odd: more than one frame, 16 bits, print colours, a size that the camera did not write.</summary>
    public required IReadOnlyList<string> Remarks { get; init; }

    /// <summary>Focal length in long sides of the picture as the camera wrote it, by the camera's own data; or null.</summary>
    public double? FocalLongSides { get; init; }

    /// <summary>True where the camera's data do not say that the file is as the camera wrote it: it may have been cropped since, and then shows less.</summary>
    public bool Worked { get; init; }

    /// <summary>Width of the upright picture, px.</summary>
    public int Width => ExifOrientation.SwapsSides(Orientation) ? StoredHeight : StoredWidth;

    /// <summary>Height of the upright picture, px.</summary>
    public int Height => ExifOrientation.SwapsSides(Orientation) ? StoredWidth : StoredHeight;

    /// <summary>True when the orientation says that the stored picture is a mirror image (2, 4, 5 and 7).</summary>
    public bool Mirrored => Orientation is 2 or 4 or 5 or 7;

    /// <summary>What measuring needs of it.</summary>
    public PictureFrame Frame => new(Width, Height, Mirrored, FocalLongSides, Worked);
}
