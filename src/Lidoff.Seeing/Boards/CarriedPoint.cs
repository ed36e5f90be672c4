using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Boards;

/// <summary>A point carried from one picture to another over the board, px there, with its doubt, px².</summary>
public readonly record struct CarriedPoint(PicturePoint At, PictureSpread Spread)
{
    // χ² of two degrees is below -2·ln(1 - 0.9) nine times in ten.
    private const double NinetyOfTwo = 4.605170185988091;

    /// <summary>Half the long axis of the region that holds it nine times in ten, px.</summary>
    public double Reach
    {
        get
        {
            var (half, turn) = ((Spread.XX + Spread.YY) / 2, (Spread.XX - Spread.YY) / 2);
            return Math.Sqrt(NinetyOfTwo * (half + Math.Sqrt((turn * turn) + (Spread.XY * Spread.XY))));
        }
    }

    /// <summary>True when a point lies in that region.</summary>
    public bool Holds(PicturePoint point)
    {
        var (x, y) = (point.X - At.X, point.Y - At.Y);
        var d = (Spread.XX * Spread.YY) - (Spread.XY * Spread.XY);
        return ((Spread.YY * x * x) - (2 * Spread.XY * x * y) + (Spread.XX * y * y)) / d <= NinetyOfTwo;
    }
}
