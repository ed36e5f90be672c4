using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Measuring.Rulers;

/// <summary>A row of evenly spaced lines found in a picture.</summary>
/// <param name="First">Place of the first line, px.</param>
/// <param name="Last">Place of the last line, px.</param>
/// <param name="Gaps">Gaps between them.</param>
/// <param name="EndPx">Standard uncertainty of each of both ends, px, by the scatter of all lines.</param>
/// <param name="ScatterPx">Scatter of the lines about where they should be, px.</param>
/// <param name="LongEvery">Every how many lines a longer one stands: several numbers on most rulers, none where no line stands out.</param>
internal sealed record FoundRuler(PicturePoint First, PicturePoint Last, int Gaps, double EndPx, double ScatterPx, IReadOnlyList<int> LongEvery)
{
    /// <summary>Place of the line halfway between them in number, rounded down: seen at a slant, it does not lie halfway in the picture.</summary>
    public required PicturePoint Middle { get; init; }

    /// <summary>From one line to the next, px.</summary>
    public double PeriodPx => First.DistanceTo(Last) / Gaps;
}
