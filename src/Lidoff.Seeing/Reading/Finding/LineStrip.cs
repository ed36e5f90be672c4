using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Reading.Finding;

/// <summary>
/// A line as the reader takes it: its outline grown on every side, 48 rows, text running to the right, grey with zero mean and unit spread
/// over the columns that hold it, 0 right of them.
/// </summary>
/// <param name="Pixels">Row after row.</param>
/// <param name="Width">Whole width, a multiple of 32.</param>
/// <param name="ValidWidth">Columns that hold the line.</param>
public sealed record LineStrip(float[] Pixels, int Width, int ValidWidth)
{
    /// <summary>Rows.</summary>
    public const int Rows = 48;

    /// <summary>
    /// By how much the outline is grown on every side, of its height: room for a Q's tail and for an outline that is a little off, and still the capitals fill as
    /// many rows as in training. Measured on every second top of bench/marks: of 379 lines 316 right at 0.05, 325 at 0.08, 328 at 0.11, 329 at 0.14.
    /// </summary>
    public const double Grow = 0.11;

    /// <summary>The widths there are; a line that would be longer is squeezed into the longest.</summary>
    public static IReadOnlyList<int> Widths { get; } = [64, 96, 128, 160, 192, 224, 256, 320, 384, 480];

    /// <summary>Straightens a line.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="outline">Its outline in the picture, its width along the text.</param>
    public static LineStrip Of(GreyPyramid picture, PictureRegion outline)
    {
        Guard.NotNull(picture);
        var grown = outline.Grown(Grow * outline.Height);
        var valid = Math.Clamp((int)Math.Round(Rows * grown.Width / grown.Height), 8, Widths[^1]);
        var (along, down) = (grown.Along, grown.Down);
        var grey = picture.Sample(
            grown.At(-0.5, -0.5), (along.X * grown.Width / valid, along.Y * grown.Width / valid), (down.X * grown.Height / Rows, down.Y * grown.Height / Rows), valid, Rows, cubic: true);
        NetworkInput.Normalise(grey);
        var width = Widths.First(each => each >= valid);
        return new(NetworkInput.Padded(grey, valid, Rows, width, Rows), width, valid);
    }
}
