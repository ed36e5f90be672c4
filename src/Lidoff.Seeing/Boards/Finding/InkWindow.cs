using Lidoff.Seeing.Measuring.Edges;

namespace Lidoff.Seeing.Boards.Finding;

/// <summary>A square of a picture in two shades, dark and bright. Places count from its middle, in its samples.</summary>
internal sealed class InkWindow
{
    private readonly bool[] bright;
    private readonly int side;

    private InkWindow(bool[] bright, int side) => (this.bright, this.side) = (bright, side);

    /// <summary>Samples one.</summary>
    /// <param name="grey">The picture.</param>
    /// <param name="x">Its middle, px of the picture.</param>
    /// <param name="y">Its middle, px of the picture.</param>
    /// <param name="step">One sample, px of the picture.</param>
    /// <param name="side">Samples a side.</param>
    /// <param name="threshold">What is brighter is bright.</param>
    public static InkWindow Of(GreyPicture grey, double x, double y, double step, int side, double threshold)
    {
        var bright = new bool[side * side];
        for (var i = 0; i < bright.Length; i++) bright[i] = grey.Between(x + (((i % side) - (side / 2)) * step), y + (((i / side) - (side / 2)) * step)) > threshold;
        return new(bright, side);
    }

    /// <summary>Everything dark, or bright, that hangs together by sides or corners.</summary>
    public List<InkShape> Shapes(bool dark)
    {
        var shapes = new List<InkShape>();
        var seen = new bool[bright.Length];
        for (var start = 0; start < bright.Length; start++) if (!seen[start] && bright[start] != dark) shapes.Add(Shape(start, dark, seen));
        return shapes;
    }

    private InkShape Shape(int start, bool dark, bool[] seen)
    {
        var (pixels, whole, queue) = (new List<(int X, int Y)>(), true, new Queue<int>([start]));
        seen[start] = true;
        while (queue.TryDequeue(out var at))
        {
            var (x, y) = (at % side, at / side);
            pixels.Add((x - (side / 2), y - (side / 2)));
            whole &= x > 0 && y > 0 && x < side - 1 && y < side - 1;
            for (var next = 0; next < 9; next++)
            {
                var (nx, ny) = (x + (next % 3) - 1, y + (next / 3) - 1);
                if (nx < 0 || ny < 0 || nx >= side || ny >= side || seen[(ny * side) + nx] || bright[(ny * side) + nx] == dark) continue;
                seen[(ny * side) + nx] = true;
                queue.Enqueue((ny * side) + nx);
            }
        }

        return new(pixels, whole);
    }
}
