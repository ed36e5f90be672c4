using Lidoff.Numbers.Spreads;
using Lidoff.Seeing.Vision;
using OpenCvSharp;

namespace Lidoff.Seeing.Composing;

/// <summary>How far a frame lies from the first one, px, and by how much its parts moved apart from one another.</summary>
internal readonly record struct FrameShift(double X, double Y, double Apart)
{
    private const int Side = 48;
    private const int Reach = 20;
    private const int MostBlocks = 80;

    public double From(FrameShift other) => Math.Sqrt(((X - other.X) * (X - other.X)) + ((Y - other.Y) * (Y - other.Y)));

    /// <summary>The shift of a frame against the first; null where the two do not show the same.</summary>
    public static FrameShift? Of(Mat first, Mat frame, IReadOnlyList<Point> places)
    {
        var found = Blocks.Match(first, frame, places, Side, Reach, 0.6);
        if (found.Count < Math.Max(3, places.Count / 3)) return null;
        var x = Statistics.Median(found.Select(m => m.ToX - m.X));
        var y = Statistics.Median(found.Select(m => m.ToY - m.Y));
        var apart = found.Select(m => Math.Sqrt(((m.ToX - m.X - x) * (m.ToX - m.X - x)) + ((m.ToY - m.Y - y) * (m.ToY - m.Y - y)))).Order().ElementAt((int)(0.9 * (found.Count - 1)));
        return new(x, y, apart);
    }

    /// <summary>Blocks to look for.</summary>
    public static List<Point> Places(Mat first) => Blocks.Places(first, Side, MostBlocks);
}
