namespace Lidoff.Numbers;

/// <content>Angles from their tangent, sine or cosine.</content>
public static partial class Elementary
{
    private const double TanOfEighth = 0.41421356237309503;

    private static ReadOnlySpan<double> AtanA =>
    [
        -0.3333333333333333, 0.19999999999999993, -0.14285714285711518, 0.11111111110754729, -0.09090909067009971,
        0.07692306735999495, -0.06666642020040112, 0.05881925252973592, -0.05258041552172777, 0.04719395016456637,
        -0.041044362109097926, 0.03063570284209356, -0.013918228004884865,
    ];

    /// <summary>Angle whose tangent is <paramref name="x"/>, −π/2 to π/2.</summary>
    public static double Atan(double x) => Math.CopySign(AtanOfRatio(Math.Abs(x), 1), x);

    /// <summary>Angle of the point (x, y), −π to π; signed zeros and infinities as in IEEE 754.</summary>
    public static double Atan2(double y, double x)
    {
        if (double.IsNaN(x) || double.IsNaN(y)) return double.NaN;
        double up = Math.Abs(y), along = Math.Abs(x);
        if (double.IsInfinity(up) && double.IsInfinity(along)) up = along = 1;
        var angle = up == 0 ? 0 : AtanOfRatio(up, along);
        if (double.IsNegative(x)) angle = Math.PI - (angle - 1.2246467991473532e-16);
        return Math.CopySign(angle, y);
    }

    /// <summary>Angle whose sine is <paramref name="x"/> (−1 to 1, else NaN).</summary>
    public static double Asin(double x) => Atan2(x, Math.Sqrt((1 - x) * (1 + x)));

    /// <summary>Angle whose cosine is <paramref name="x"/> (−1 to 1, else NaN), 0 to π.</summary>
    public static double Acos(double x) => Atan2(Math.Sqrt((1 - x) * (1 + x)), x);

    // The angle of up/along, both zero or more and not both zero.
    private static double AtanOfRatio(double up, double along)
    {
        if (along == 0 || double.IsInfinity(up)) return double.IsNaN(up) ? up : QuarterTurn;

        // Above the diagonal the other angle of the triangle is the small one.
        if (up > along) return QuarterTurn - (Small(along / up) - QuarterTurnRest);
        return Small(up / along);

        // An eighth turn is taken off where the tangent is above tan(π/8).
        static double Small(double t)
        {
            if (t <= TanOfEighth) return Series(t);
            return 0.7853981633974483 + (Series((t - 1) / (t + 1)) + 3.061616997868383e-17);
        }

        static double Series(double t)
        {
            var z = t * t;
            var sum = AtanA[^1];
            for (var i = AtanA.Length - 2; i >= 0; i--) sum = Math.FusedMultiplyAdd(sum, z, AtanA[i]);
            return Math.FusedMultiplyAdd(t * z, sum, t);
        }
    }
}
