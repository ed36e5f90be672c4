using CsCheck;

namespace Lidoff.Reckoning.Tests;

/// <summary>Inside its ranges a formula has a finite value, but for the few questions that have no answer.</summary>
public sealed class RangeTests
{
    public static TheoryData<string> Names => CalculationTests.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void Anywhere_in_its_ranges_a_calculation_has_a_finite_value_and_slopes(string name)
    {
        var calculation = Calculations.Find(name)!;
        var inputs = calculation.Info.Inputs;
        Gen.Double[0, 1].Array[inputs.Count].Sample(
            shares =>
            {
                double[] at = [.. shares.Select((share, i) => inputs[i].Least + (share * share * share * (inputs[i].Most - inputs[i].Least)))];
                return HasNoAnswer(name, at) || double.IsFinite(calculation.Nominal(at)) && calculation.Slopes(at).All(double.IsFinite);
            },
            iter: 200);
    }

    // More hits than trials, no difference of temperature, a ball as heavy as the liquid it should sink in.
    private static bool HasNoAnswer(string name, double[] at) => name switch
    {
        "share_low" or "share_high" => at[0] > at[1],
        "thermal_expansion" => at[2] == at[3],
        "falling_ball_viscosity" => at[3] == at[5],
        _ => false,
    };
}
