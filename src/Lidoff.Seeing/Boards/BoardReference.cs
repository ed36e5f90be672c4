using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Boards;

/// <summary>A known length in a picture, the picture by its number in the fit.</summary>
internal sealed record BoardReference(int View, ReferenceLength Length)
{
    // A click where nothing else was said, px. As in a measuring job.
    private const double ClickPx = 1;

    /// <summary>One end.</summary>
    public PicturePoint From => Length.From;

    /// <summary>The other.</summary>
    public PicturePoint To => Length.To;

    /// <summary>Relative standard uncertainty, never exactly zero.</summary>
    public double RelativeU
    {
        get
        {
            var (click, length) = ((Length.ClickPx ?? ClickPx) / From.DistanceTo(To), Length.UMm / Length.LengthMm);
            return Math.Max(1e-5, Math.Sqrt((2 * click * click) + (length * length)));
        }
    }
}
