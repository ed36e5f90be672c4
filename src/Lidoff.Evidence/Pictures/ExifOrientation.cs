using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Pictures;

/// <summary>
/// The orientation tag 0x0112 (Exif 2.32, table in 4.6.5.1.6; the same in TIFF 6.0): which side of the scene the file's
/// first row and first column show. Everything in Lidoff speaks of the upright picture.
/// </summary>
public static class ExifOrientation
{
    /// <summary>1..8 as they are; a missing or impossible value means 1, as viewers take it.</summary>
    public static int Known(int? tag) => tag is >= 1 and <= 8 ? tag.Value : 1;

    /// <summary>True when upright width is stored height.</summary>
    public static bool SwapsSides(int orientation) => Checked(orientation) >= 5;

    /// <summary>Size of the upright picture from the stored one's.</summary>
    public static PictureSize UprightSize(int orientation, PictureSize stored) =>
        SwapsSides(orientation) ? new(stored.Height, stored.Width) : stored;

    /// <summary>From points of the file as stored to points of the upright picture.</summary>
    public static Projective ToUpright(string from, string to, int orientation, PictureSize stored)
    {
        var (w, h) = (Guard.Positive(stored.Width), Guard.Positive(stored.Height));
        return new(from, to, Checked(orientation) switch
        {
            1 => Matrix3.One,
            2 => new(-1, 0, w, 0, 1, 0, 0, 0, 1),
            3 => new(-1, 0, w, 0, -1, h, 0, 0, 1),
            4 => new(1, 0, 0, 0, -1, h, 0, 0, 1),
            5 => new(0, 1, 0, 1, 0, 0, 0, 0, 1),
            6 => new(0, -1, h, 1, 0, 0, 0, 0, 1),
            7 => new(0, -1, h, -1, 0, w, 0, 0, 1),
            _ => new(0, 1, 0, -1, 0, w, 0, 0, 1),
        });
    }

    private static int Checked(int orientation)
    {
        Guard.That(orientation is >= 1 and <= 8, "an orientation from 1 to 8");
        return orientation;
    }
}
