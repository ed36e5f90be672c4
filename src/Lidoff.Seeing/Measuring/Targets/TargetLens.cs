using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Measuring.Targets;

/// <summary>
/// How a flat grid shows in a picture: a homography of its steps, and one radial term of the lens about the picture's middle. As with
/// <see cref="Cameras.CameraPose"/> places count from there in half long sides, and one at r belongs at r·(1 + bend·r²).
/// </summary>
/// <param name="H">Eight numbers of the homography, the ninth being 1: from steps, less <paramref name="Middle"/> and over <paramref name="Span"/>, to straightened places.</param>
/// <param name="Bend">The radial term; above zero: barrel.</param>
/// <param name="Middle">Column and row that count as nought.</param>
/// <param name="Span">Steps that count as one.</param>
/// <param name="Frame">The picture.</param>
internal sealed record TargetLens(double[] H, double Bend, (double C, double R) Middle, double Span, PictureFrame Frame)
{
    private double Half => Math.Max(Frame.Width, Frame.Height) / 2.0;

    /// <summary>A place of the picture from its middle in half long sides, not straightened.</summary>
    public (double X, double Y) Seen(PicturePoint at) => ((at.X - (Frame.Width / 2.0)) / Half, (at.Y - (Frame.Height / 2.0)) / Half);

    /// <summary>A place of the picture, straightened.</summary>
    public (double X, double Y) Straight(PicturePoint at)
    {
        var (x, y) = Seen(at);
        var grown = 1 + (Bend * ((x * x) + (y * y)));
        return (x * grown, y * grown);
    }

    /// <summary>Steps, centred and scaled as the homography takes them.</summary>
    public (double G, double K) Grid(double column, double row) => ((column - Middle.C) / Span, (row - Middle.R) / Span);

    /// <summary>The straightened place of a place of the grid.</summary>
    public (double X, double Y) Shows(double g, double k)
    {
        var w = (H[6] * g) + (H[7] * k) + 1;
        return (((H[0] * g) + (H[1] * k) + H[2]) / w, ((H[3] * g) + (H[4] * k) + H[5]) / w);
    }

    /// <summary>
    /// A circle's middle is not its ellipse's: under perspective that is the image of the pole of the horizon's line, which lies ρ²·n/w
    /// beside it (projective geometry: the middle of a conic is the pole of the line at infinity).
    /// </summary>
    /// <param name="g">The circle's middle.</param>
    /// <param name="k">The circle's middle.</param>
    /// <param name="radius">Its radius, in the same unit; 0 for a corner.</param>
    public (double G, double K) EllipseMiddle(double g, double k, double radius)
    {
        var shift = radius * radius / ((H[6] * g) + (H[7] * k) + 1);
        return (g - (H[6] * shift), k - (H[7] * shift));
    }

    /// <summary>Where a column and row show, moved by something straightened, px.</summary>
    public PicturePoint At(double column, double row, double moveX = 0, double moveY = 0)
    {
        var (g, k) = Grid(column, row);
        var (x, y) = Shows(g, k);
        return Bent(x + moveX, y + moveY);
    }

    /// <summary>px of the picture for one step at a column and row, the mean of both directions by area.</summary>
    public double PxPerStep(double column, double row)
    {
        var (a, b, c) = (At(column, row), At(column + 0.5, row), At(column, row + 0.5));
        return 2 * Math.Sqrt(Math.Abs(((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X))));
    }

    private PicturePoint Bent(double x, double y)
    {
        // r·(1 + bend·r²) turned round by Newton's rule.
        var straight = Math.Sqrt((x * x) + (y * y));
        var r = straight;
        for (var round = 0; round < 12; round++) r -= ((r * (1 + (Bend * r * r))) - straight) / Math.Max(0.1, 1 + (3 * Bend * r * r));
        var shrunk = straight > 0 ? r / straight : 1;
        return new((Frame.Width / 2.0) + (x * shrunk * Half), (Frame.Height / 2.0) + (y * shrunk * Half));
    }
}
