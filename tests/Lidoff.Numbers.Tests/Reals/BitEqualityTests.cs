using System.Numerics;
using CsCheck;
using Lidoff.Numbers.Reals;
using Lidoff.Numbers.Spreads;

namespace Lidoff.Numbers.Tests.Reals;

/// <summary>A lane gives exactly the bits that the scalar gives, for any double at all and whatever stands in the lanes beside it.</summary>
public sealed class BitEqualityTests
{
    private const int Iterations = 20_000;

    private static readonly double[] Places =
    [
        0.0, -0.0, 1, -1, double.NaN, double.PositiveInfinity, double.NegativeInfinity, double.Epsilon, double.MaxValue, 2.2250738585072014e-308,
        Math.PI, Math.PI / 2, 709.782712893384, -745.1332191019411, -708.4, 0.5, 1073741824, -40, 1e300,
    ];

    // Any bit pattern, ordinary magnitudes, and the places where functions change their course.
    private static readonly Gen<double> Any = Gen.OneOf(
        Gen.ULong.Select(BitConverter.UInt64BitsToDouble), Gen.Double[-800, 800], Gen.Double[-2, 2],
        Gen.Int[0, Places.Length - 1].Select(i => Places[i]));

    [Fact]
    public void Functions_of_one_argument() => Any.Array[Lanes.Count].Sample(
        x =>
        {
            var lanes = Lanes.Load(x, 0);
            return Same(Lanes.Exp(lanes), i => Elementary.Exp(x[i]))
                && Same(Lanes.Log(lanes), i => Elementary.Log(x[i]))
                && Same(Lanes.Sin(lanes), i => Elementary.Sin(x[i]))
                && Same(Lanes.Cos(lanes), i => Elementary.Cos(x[i]))
                && Same(Lanes.Sqrt(lanes), i => Math.Sqrt(x[i]))
                && Same(Elementary.TanOf(lanes), i => Elementary.Tan(x[i]))
                && Same(Elementary.Expm1Of(lanes), i => Elementary.Expm1(x[i]))
                && Same(Elementary.Log1pOf(lanes), i => Elementary.Log1p(x[i]))
                && Same(Elementary.Log2Of(lanes), i => Elementary.Log2(x[i]))
                && Same(Elementary.Log10Of(lanes), i => Elementary.Log10(x[i]))
                && Same(NormalDistribution.QuantileOf(lanes), i => NormalDistribution.QuantileOf<Scalar>(x[i]).Value);
        },
        iter: Iterations);

    [Fact]
    public void Functions_of_two_arguments_and_operators() => Gen.Select(Any.Array[Lanes.Count], Any.Array[Lanes.Count]).Sample(
        (x, y) =>
        {
            Lanes a = Lanes.Load(x, 0), b = Lanes.Load(y, 0);
            return Same(Lanes.Pow(a, b), i => Elementary.Pow(x[i], y[i]))
                && Same(Lanes.Min(a, b), i => Scalar.Min(x[i], y[i]).Value)
                && Same(Lanes.Max(a, b), i => Scalar.Max(x[i], y[i]).Value)
                && Same(Lanes.IfLess(a, b, a, -b), i => Scalar.IfLess(x[i], y[i], x[i], -y[i]).Value)
                && Same(a + b, i => x[i] + y[i]) && Same(a - b, i => x[i] - y[i])
                && Same(a * b, i => x[i] * y[i]) && Same(a / b, i => x[i] / y[i]);
        },
        iter: Iterations);

    [Fact]
    public void Minimum_and_maximum_never_lose_a_NaN()
    {
        Assert.True(double.IsNaN(Scalar.Min(double.NaN, 1).Value) && double.IsNaN(Scalar.Min(1, double.NaN).Value));
        Assert.True(double.IsNaN(Scalar.Max(double.NaN, 1).Value) && double.IsNaN(Scalar.Max(1, double.NaN).Value));
        Assert.True(double.IsNaN(Lanes.Min(double.NaN, 1).Value[0]) && double.IsNaN(Lanes.Min(1, double.NaN).Value[0]));
    }

    private static bool Same(Lanes lanes, Func<int, double> scalar)
    {
        for (var i = 0; i < Vector<double>.Count; i++)
        {
            double lane = lanes.Value[i], one = scalar(i);
            if (double.IsNaN(lane) && double.IsNaN(one)) continue;
            if (BitConverter.DoubleToInt64Bits(lane) != BitConverter.DoubleToInt64Bits(one)) return false;
        }

        return true;
    }
}
