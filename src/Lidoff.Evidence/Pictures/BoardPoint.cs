namespace Lidoff.Evidence.Pictures;

/// <summary>
/// A point of the board in millimetres, as seen from its front whichever side it lies on: x right, y down. A through hole
/// has one board point, not two.
/// </summary>
public readonly record struct BoardPoint(double X, double Y)
{
    /// <summary>Distance in millimetres.</summary>
    public double DistanceTo(BoardPoint other) => Math.Sqrt(((X - other.X) * (X - other.X)) + ((Y - other.Y) * (Y - other.Y)));
}
