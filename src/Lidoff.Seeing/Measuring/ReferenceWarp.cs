using Lidoff.Numbers;

namespace Lidoff.Seeing.Measuring;

/// <summary>
/// What a few known lengths alone say of the picture's shape, for words: whether one scale explains them as often as chance would,
/// and if not, whether a scale for each direction does. Values and doubts come from <see cref="ScaleFit"/>.
/// </summary>
internal sealed class ReferenceWarp
{
    // A clean picture is called warped once in five hundred; below that the references are averaged.
    private const double OnceInFiveHundred = 2.878;
    private const double OnceInFifty = 2.054;

    // Two directions: less than 30° apart they cannot tell unequal axes from a wrong length.
    private const double ApartCosineOfDouble = 0.5;

    private readonly IReadOnlyList<double> levels;
    private readonly IReadOnlyList<double> u;
    private readonly IReadOnlyList<double[]> factors;

    /// <summary>Weighs the shapes.</summary>
    /// <param name="factors">Factors of each reference (<see cref="PictureShape.Factors"/>).</param>
    /// <param name="levels">ln(px/mm) of each, brought down to the board.</param>
    /// <param name="u">Standard uncertainty of each.</param>
    public ReferenceWarp(IReadOnlyList<double[]> factors, IReadOnlyList<double> levels, IReadOnlyList<double> u)
    {
        (this.factors, this.levels, this.u) = (factors, levels, u);
        var limit = MisfitLimit(levels.Count - 1, seldom: true);
        Even = ShapeFit.Of(PictureShape.Square, factors, levels, u).Misfit <= limit;
        var crossed = factors.Any(a => factors.Any(b => (a[1] * b[1]) + (a[2] * b[2]) < ApartCosineOfDouble));
        if (Even || !crossed) return;
        var axes = ShapeFit.Of(new(true), factors, levels, u);
        if (axes.Misfit > limit) return;
        var (along, diagonal) = (axes.Coefficient(1), axes.Coefficient(2));
        AxesDifference = 2 * Math.Sqrt((along * along) + (diagonal * diagonal));
    }

    /// <summary>True when one even scale explains every reference.</summary>
    public bool Even { get; }

    /// <summary>Relative difference of the scale between the two directions where it is largest and smallest; 0 where no such difference explains the references.</summary>
    public double AxesDifference { get; }

    /// <summary>Relative difference between the largest and the smallest scale that single references give.</summary>
    public double Spread => Elementary.Exp(levels.Max() - levels.Min()) - 1;

    /// <summary>
    /// The scatter between references that makes their misfit what chance would give (Mandel and Paule's method for laboratories that
    /// disagree, Anal. Chem. 42, 1970): then a short honest reference counts as much as a long mistaken one.
    /// </summary>
    public double Between()
    {
        var (low, high) = (0.0, levels.Max() - levels.Min());
        for (var round = 0; round < 40; round++)
        {
            var middle = (low + high) / 2;
            double[] wider = [.. u.Select(each => Math.Sqrt((each * each) + (middle * middle)))];
            if (ShapeFit.Of(PictureShape.Square, factors, levels, wider).Misfit > levels.Count - 1) low = middle;
            else high = middle;
        }

        return high;
    }

    /// <summary>χ² that a clean picture passes once in five hundred (seldom) or once in fifty (Wilson and Hilferty's approximation).</summary>
    public static double MisfitLimit(int degrees, bool seldom)
    {
        if (degrees == 0) return double.PositiveInfinity;
        var spread = 2.0 / (9 * degrees);
        var root = 1 - spread + ((seldom ? OnceInFiveHundred : OnceInFifty) * Math.Sqrt(spread));
        return degrees * root * root * root;
    }
}
