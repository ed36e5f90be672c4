using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Measuring.Rulers;

/// <summary>A ruler that was found in a picture without being pointed at.</summary>
/// <param name="First">Place of its first line, px.</param>
/// <param name="Last">Place of its last line, px.</param>
/// <param name="Gaps">Gaps between them.</param>
/// <param name="EndPx">Standard uncertainty of each of both ends, px.</param>
/// <param name="TickMm">From one line to the next, mm, where its longer lines tell; null where it is to be asked for.</param>
public sealed record RulerProposal(PicturePoint First, PicturePoint Last, int Gaps, double EndPx, double? TickMm)
{
    /// <summary>Place of the line halfway between them in number, rounded down; halfway in the picture where nothing else is known.</summary>
    public PicturePoint Middle { get; init; } = new(First.X + ((Last.X - First.X) * (Gaps / 2) / Gaps), First.Y + ((Last.Y - First.Y) * (Gaps / 2) / Gaps));

    /// <summary>From one line to the next, px.</summary>
    public double PeriodPx => First.DistanceTo(Last) / Gaps;

    /// <summary>The known length that it is where its lines are that far apart, with its middle line.</summary>
    /// <param name="tickMm">mm, above zero.</param>
    /// <param name="heightMm">Height of its face above the board, mm.</param>
    public ReferenceLength Reference(double tickMm, double heightMm = 0) =>
        new(First, Last, Gaps * tickMm, RulerReferences.RulerU * Gaps * tickMm, heightMm, EndPx) { Middle = Gaps > 1 ? (Middle, Gaps / 2 * tickMm) : null };
}
