using Lidoff.Seeing.Rendering;

namespace Lidoff.Seeing.Measuring.Words;

/// <summary>How much a patch looks like any capital or digit, the four ways a line of words can lie along its direction.</summary>
internal static class LetterLikeness
{
    /// <summary>Columns of the raster that patches and letters are brought to.</summary>
    public const int Columns = 12;

    /// <summary>Rows of the raster.</summary>
    public const int Rows = 16;

    /// <summary>The ways: upright, turned by half a turn, mirrored left to right, mirrored top to bottom.</summary>
    public const int Ways = 4;

    // Half a pen's width, in cap heights.
    private const double Pen = 0.085;

    // Letters that look the same mirrored or that a mirror turns into one another say nothing and are left to the others' scores.
    private const string Letters = "ABCDEFGHJKLMNOPQRSTUVWXYZ023456789";

    private static readonly double[][] Shapes = [.. Letters.Select(Shape)];

    /// <summary>The best likeness, −1 to 1, for each way.</summary>
    public static double[] Of(double[] raster)
    {
        Normalise(raster);
        var best = new double[Ways];
        for (var way = 0; way < Ways; way++)
        {
            var seen = Turned(raster, way);
            best[way] = Shapes.Max(shape => Product(shape, seen));
        }

        return best;
    }

    private static double[] Shape(char letter)
    {
        var raster = new double[Columns * Rows];
        // The box reaches to the outer sides of the strokes.
        var (wide, high) = ((4 / 6.0) + (2 * Pen), 1 + (2 * Pen));
        for (var row = 0; row < Rows; row++)
        {
            for (var column = 0; column < Columns; column++)
            {
                var distance = StrokeFont.Distance(letter.ToString(), ((column + 0.5) / Columns * wide) - Pen, ((row + 0.5) / Rows * high) - Pen, 0.5);
                raster[(row * Columns) + column] = Math.Clamp(0.5 + ((Pen - distance) * Rows), 0, 1);
            }
        }

        Normalise(raster);
        return raster;
    }

    private static double[] Turned(double[] raster, int way)
    {
        var turned = new double[raster.Length];
        for (var row = 0; row < Rows; row++)
        {
            for (var column = 0; column < Columns; column++)
            {
                var (c, r) = (way is 1 or 2 ? Columns - 1 - column : column, way is 1 or 3 ? Rows - 1 - row : row);
                turned[(row * Columns) + column] = raster[(r * Columns) + c];
            }
        }

        return turned;
    }

    private static void Normalise(double[] raster)
    {
        var mean = raster.Sum() / raster.Length;
        var norm = Math.Sqrt(raster.Sum(value => (value - mean) * (value - mean))) + 1e-12;
        for (var i = 0; i < raster.Length; i++) raster[i] = (raster[i] - mean) / norm;
    }

    private static double Product(double[] a, double[] b)
    {
        var sum = 0.0;
        for (var i = 0; i < a.Length; i++) sum += a[i] * b[i];
        return sum;
    }
}
