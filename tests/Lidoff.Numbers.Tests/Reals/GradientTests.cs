using CsCheck;
using Lidoff.Numbers.Calculating;
using Lidoff.Numbers.Reals;
using Lidoff.Numbers.Tests.Calculating;

namespace Lidoff.Numbers.Tests.Reals;

public sealed class GradientTests
{
    [Fact]
    public void Slopes_agree_with_central_differences() => Gen.Double[0.5, 2].Array[10].Sample(
        x =>
        {
            var everything = new Everything();
            var slopes = everything.Slopes(x);
            for (var i = 0; i < x.Length; i++)
            {
                const double step = 1e-5;
                double[] up = [.. x], down = [.. x];
                up[i] += step;
                down[i] -= step;

                // A step across the kink would compare two different arms.
                if (Math.Abs(x[8] - x[9]) < 2 * step) continue;
                var difference = (everything.Nominal(up) - everything.Nominal(down)) / (2 * step);
                if (Math.Abs(difference - slopes[i]) > 1e-6 * (1 + Math.Abs(difference))) return false;
            }

            return true;
        },
        iter: 500);

    [Fact]
    public void An_input_that_does_not_enter_has_no_slope_even_at_a_root_of_zero()
    {
        var slopes = new RootOfFirst().Slopes([0, 3]);
        Assert.Equal(double.PositiveInfinity, slopes[0]);
        Assert.Equal(1, slopes[1]);
    }

    public sealed class Everything : Calculation<Everything>, IFormula
    {
        public override CalculationInfo Info { get; } = TestInfo.Of("every function", [.. Enumerable.Range(0, 10).Select(i => "x" + i)]);

        public static T Evaluate<T>(ReadOnlySpan<T> x) where T : struct, IReal<T> =>
            T.Exp(x[0] * x[1]) + T.Log(x[1] + x[2]) - (T.Sqrt(x[3] / x[2]) * T.Sin(x[4]))
            + (T.Cos(x[5] * 3.0) / (1.0 + x[6])) + T.Pow(x[7], x[6]) + T.Min(x[8], x[9]) + (2.0 * T.Max(x[8] * x[8], x[9] * x[9]))
            + T.IfLess(x[8], x[9], -x[8] * x[0], x[9] * x[1]);
    }

    public sealed class RootOfFirst : Calculation<RootOfFirst>, IFormula
    {
        public override CalculationInfo Info { get; } = TestInfo.Of("a root and a term beside it", "a", "b");

        public static T Evaluate<T>(ReadOnlySpan<T> x) where T : struct, IReal<T> => T.Sqrt(x[0]) + x[1];
    }
}
