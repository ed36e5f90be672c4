using Lidoff.Evidence.Pictures;
using Lidoff.Numbers;
using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Spreads;

namespace Lidoff.Seeing.Measuring.Carrying;

/// <summary>
/// What one picture with known lengths or a target tells of all pictures of the same camera, zoom and size: the scale where the camera's axis meets the board, whatever slant either was taken
/// at, and, by a target, the lens. Zoom rings get moved and lenses focused anew, so both carry more doubt than where they were found.
/// </summary>
/// <param name="Width">Width of its picture, px.</param>
/// <param name="Height">Height of its picture, px.</param>
/// <param name="MmPerHalf">mm on the board for half a long side of the picture, about the picture's middle, looked at squarely.</param>
/// <param name="RelativeU">Relative standard uncertainty of that, in its own picture.</param>
/// <param name="HeightMm">Height above the board where that holds, mm.</param>
/// <param name="Bend">The lens's radial term.</param>
/// <param name="BendU">Its standard uncertainty, in its own picture.</param>
/// <param name="ByTarget">True where a target gave it, so that it tells the lens as well.</param>
public sealed record CameraCalibration(int Width, int Height, double MmPerHalf, double RelativeU, double HeightMm, double Bend, double BendU, bool ByTarget)
{
    // A zoom ring put back to its mark and focused anew. Common practice, no source; a ring with clicks is better.
    private const double ZoomAgain = 0.01;

    // That a lens's radial term changes with zoom and focus is well known (Fryer and Brown, Photogramm. Eng. Remote Sens. 52, 1986; Al-Ajlouni and Fraser, ISPRS Commission V, 2006); how much a ring put
    // back to its mark changes it is a judgement: a tenth of it, as a few per cent of zoom do where it goes with the square or cube of the focal length, and a part that weak lenses have too.
    private const double BendAgain = 0.1;
    private const double LeastBendAgain = 0.0003;

    // What chance and any slant that is believed in make once in five hundred pictures is said.
    private const double Seldom = 0.002;

    /// <summary>From a picture whose scale was fitted.</summary>
    public static CameraCalibration Of(ScaledPicture picture)
    {
        Guard.NotNull(picture);
        var ((mm, u), (bend, bendU)) = (picture.Fit.AtMiddle(), picture.Fit.Lens());
        return new(picture.Frame.Width, picture.Frame.Height, mm, u, picture.Fit.ReferenceHeightMm, bend, bendU, picture.ByTarget);
    }

    /// <summary>Whether a picture is as large, upright or turned: another size is another way of taking pictures, with another scale.</summary>
    public bool Fits(PictureFrame frame) => Fits(Width, Height, frame);

    /// <summary>The same of a picture of so many px.</summary>
    public static bool Fits(int width, int height, PictureFrame frame)
    {
        Guard.NotNull(frame);
        return (width, height) == (frame.Width, frame.Height) || (width, height) == (frame.Height, frame.Width);
    }

    /// <summary>The lens as it counts in another picture; null where no target told it.</summary>
    public CarriedLens? Lens => ByTarget ? new(Bend, Math.Sqrt(Square(BendU) + Square(BendAgain * Bend) + Square(LeastBendAgain))) : null;

    /// <summary>Relative standard uncertainty of the scale in another picture.</summary>
    public double CarriedU => Math.Sqrt(Square(RelativeU) + Square(ZoomAgain));

    /// <summary>What is between two places of another picture that is looked at squarely, as a known length of it.</summary>
    /// <param name="from">One place.</param>
    /// <param name="to">Another.</param>
    /// <param name="frame">That picture.</param>
    public ReferenceLength Between(PicturePoint from, PicturePoint to, PictureFrame frame)
    {
        Guard.NotNull(frame);
        var half = Math.Max(frame.Width, frame.Height) / 2.0;
        var ((x1, y1), (x2, y2)) = (Straight(from), Straight(to));
        var mm = MmPerHalf * Math.Sqrt(Square(x2 - x1) + Square(y2 - y1));
        return new(from, to, mm, CarriedU * mm, HeightMm, 0) { Carried = true };

        (double X, double Y) Straight(PicturePoint at)
        {
            var (x, y) = ((at.X - (frame.Width / 2.0)) / half, (at.Y - (frame.Height / 2.0)) / half);
            var grown = ByTarget ? 1 + (Bend * (Square(x) + Square(y))) : 1;
            return (x * grown, y * grown);
        }
    }

    /// <summary>The same across the middle half of the picture.</summary>
    public ReferenceLength Across(PictureFrame frame)
    {
        Guard.NotNull(frame);
        return Between(new(0.25 * frame.Width, 0.5 * frame.Height), new(0.75 * frame.Width, 0.5 * frame.Height), frame);
    }

    /// <summary>By how much a picture's own scale is off this one, as a share (above zero: more mm), where that is more than both doubts allow; null where they agree.</summary>
    public double? Contradicts(ScaleFit own)
    {
        Guard.NotNull(own);
        // Under each pose by itself: one known length leaves a slant open, which may be what makes the difference.
        var chance = own.PosesAtMiddle().Sum(pose => pose.Weight * 2 * NormalDistribution.Cdf(-Math.Abs(Elementary.Log(pose.Mm / MmPerHalf)) / Math.Sqrt(Square(pose.RelativeU) + Square(CarriedU))));
        return chance < Seldom ? (own.AtMiddle().Mm / MmPerHalf) - 1 : null;
    }

    private static double Square(double x) => x * x;
}
