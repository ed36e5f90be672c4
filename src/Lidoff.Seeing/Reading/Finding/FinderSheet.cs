using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Reading.Finding;

/// <summary>
/// A region of a picture as the finder takes it: its longer side 384 px, grey with zero mean and unit spread, filled up with 0 to the right
/// and at the foot to multiples of 32.
/// </summary>
/// <param name="Pixels">Row after row.</param>
/// <param name="Width">Whole width.</param>
/// <param name="Height">Whole height.</param>
/// <param name="ValidWidth">Width that holds the picture.</param>
/// <param name="ValidHeight">Height that holds it.</param>
/// <param name="Region">What part of the picture that is.</param>
public sealed record FinderSheet(float[] Pixels, int Width, int Height, int ValidWidth, int ValidHeight, PictureRegion Region)
{
    /// <summary>The longer side, px.</summary>
    public const int LongSide = 384;

    private const int Multiple = 32;

    /// <summary>Samples a region.</summary>
    /// <param name="picture">Brightness of the picture.</param>
    /// <param name="region">What of it.</param>
    /// <param name="coarser">How long its longer side is on the sheet, of the usual.</param>
    /// <param name="cubic">Whether a cubic, and not a straight line, lies between the pixels of what is enlarged.</param>
    public static FinderSheet Of(GreyPyramid picture, PictureRegion region, double coarser = 1, bool cubic = true)
    {
        var scale = coarser * LongSide / Math.Max(region.Width, region.Height);
        var (w, h) = (Math.Clamp((int)Math.Round(region.Width * scale), 1, LongSide), Math.Clamp((int)Math.Round(region.Height * scale), 1, LongSide));
        var (along, down) = (region.Along, region.Down);
        var grey = picture.Sample(
            region.At(-0.5, -0.5), (along.X * region.Width / w, along.Y * region.Width / w), (down.X * region.Height / h, down.Y * region.Height / h), w, h, cubic);
        NetworkInput.Normalise(grey);
        var (width, height) = (Up(w), Up(h));
        return new(NetworkInput.Padded(grey, w, h, width, height), width, height, w, h, region);
    }

    /// <summary>True when every pixel is of one brightness.</summary>
    public bool IsEven => Array.TrueForAll(Pixels, pixel => pixel == 0);

    /// <summary>How many px of the picture one px of the sheet is.</summary>
    public double Step => Region.Width / ValidWidth;

    /// <summary>A place on the sheet in the picture.</summary>
    public PicturePoint ToPicture(double x, double y) => Region.At((x / ValidWidth) - 0.5, (y / ValidHeight) - 0.5);

    /// <summary>A rectangle on the sheet in the picture.</summary>
    public PictureRegion ToPicture(PictureRegion onSheet) =>
        new(ToPicture(onSheet.Middle.X, onSheet.Middle.Y), onSheet.Width * Step, onSheet.Height * Step, Angles.Whole(onSheet.Turn + Region.Turn));

    /// <summary>A rectangle of the picture on the sheet.</summary>
    public PictureRegion OnSheet(PictureRegion inPicture)
    {
        var (x, y) = Region.Inside(inPicture.Middle);
        return new(new((x / Step) + (ValidWidth / 2.0), (y / Step) + (ValidHeight / 2.0)), inPicture.Width / Step, inPicture.Height / Step, Angles.Whole(inPicture.Turn - Region.Turn));
    }

    private static int Up(int side) => (side + Multiple - 1) / Multiple * Multiple;
}
