using System.Globalization;
using Lidoff.Numbers.Calculating;
using Lidoff.Reckoning.References;

namespace Lidoff.Reckoning.Tests;

/// <summary>What every calculation owes: a source, values from outside that it agrees with, and a formula fit for all number types.</summary>
public sealed class CalculationTests
{
    private static readonly string[] Origins = ["published", "independent", "practice", "memory"];

    public static TheoryData<string> Names => [.. Calculations.All.Select(item => item.Info.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void It_agrees_with_every_value_from_outside(string name)
    {
        var calculation = Calculations.Find(name)!;
        var info = calculation.Info;
        var rows = ReferenceTable.Of(info);
        Assert.NotEmpty(rows);
        var wrong = new List<string>();
        foreach (var row in rows)
        {
            Assert.Contains(row.Origin, Origins);
            Assert.NotEmpty(row.Source);
            var value = info.Unit.FromSi(calculation.Nominal(Si(info, row.Inputs)));
            if (!(Math.Abs(value - row.Expected) <= row.Tolerance))
                wrong.Add(string.Create(CultureInfo.InvariantCulture, $"{value} is not {row.Expected} ± {row.Tolerance} ({row.Source})"));
        }

        Assert.Empty(wrong);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Its_reference_inputs_lie_inside_its_ranges_and_all_defaults_too(string name)
    {
        var info = Calculations.Find(name)!.Info;
        foreach (var row in ReferenceTable.Of(info))
        {
            var si = Si(info, row.Inputs);
            for (var i = 0; i < si.Length; i++) Assert.InRange(si[i], info.Inputs[i].Least, info.Inputs[i].Most);
        }

        foreach (var input in info.Inputs.Where(input => input.Default is not null)) Assert.InRange(input.Default!.Value, input.Least, input.Most);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Its_slopes_are_those_of_a_small_step(string name)
    {
        var calculation = Calculations.Find(name)!;
        var info = calculation.Info;
        // The last row of a table is never the corner of a range or a kink.
        var at = Si(info, ReferenceTable.Of(info)[^1].Inputs);
        var slopes = calculation.Slopes(at);
        for (var i = 0; i < at.Length; i++)
        {
            var step = at[i] == 0 ? (info.Inputs[i].Most - info.Inputs[i].Least) * 1e-9 : Math.Abs(at[i]) * 1e-5;
            double[] up = [.. at], down = [.. at];
            up[i] += step;
            down[i] -= step;
            var expected = (calculation.Nominal(up) - calculation.Nominal(down)) / (2 * step);
            var scale = Math.Max(Math.Abs(expected), Math.Abs(calculation.Nominal(at)) / Math.Max(Math.Abs(at[i]), step));
            Assert.True(Math.Abs(slopes[i] - expected) <= 2e-4 * scale, $"{info.Inputs[i].Key}: {slopes[i]} is not {expected}");
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void It_says_what_it_is(string name)
    {
        var info = Calculations.Find(name)!.Info;
        Assert.Matches("^[a-z][a-z0-9_]*$", info.Name);
        Assert.Matches("^[A-Z].*\\.$", info.Says);
        Assert.NotEmpty(info.Source);
        Assert.All(info.Inputs, input => Assert.Matches("^[a-z][a-z0-9_]*$", input.Key));
        Assert.All(info.Inputs, input => Assert.NotEmpty(input.Says));
        Assert.All(info.Cautions, caution => Assert.Matches("^[A-Z].*[.]$", caution));
        Assert.Equal(info.Inputs.Count, info.Inputs.Select(input => input.Key).Distinct().Count());
    }

    [Fact]
    public void What_was_compared_with_memory_alone_is_not_called_checked() =>
        Assert.All(
            Calculations.All.Where(item => ReferenceTable.Of(item.Info).All(row => row.Origin == "memory")),
            item => Assert.Equal(Maturity.Experimental, item.Info.Maturity));

    [Fact]
    public void An_experimental_one_says_what_of_it_is_from_memory() =>
        Assert.All(
            Calculations.All.Where(item => item.Info.Maturity == Maturity.Experimental),
            item => Assert.Contains(item.Info.Cautions, caution => caution.Contains("from memory", StringComparison.Ordinal)));

    [Theory]
    [MemberData(nameof(Names))]
    public void It_is_found_by_its_name_and_by_no_other_spelling(string name)
    {
        Assert.Equal(name, Calculations.Find(name)?.Info.Name);
        Assert.Null(Calculations.Find(name.ToUpperInvariant()));
        Assert.Null(Calculations.Find("_" + name));
    }

    [Fact]
    public void None_is_written_so_that_the_registry_misses_it() =>
        Assert.Empty(Lidoff.Evidence.Registering.Registry.NearMisses<Calculation>(typeof(Calculations).Assembly));

    [Fact]
    public void The_list_counts_the_rows_that_are_checked() =>
        Assert.All(Calculations.All, item => Assert.Equal(ReferenceTable.Of(item.Info).Count, ReferenceTable.Count(item.Info.Name)));

    [Fact]
    public void No_reference_table_is_left_without_its_calculation()
    {
        var tables = typeof(Calculations).Assembly.GetManifestResourceNames().Where(name => name.EndsWith(".reference.csv", StringComparison.Ordinal));
        Assert.All(tables, table => Assert.NotNull(Calculations.Find(table[..^".reference.csv".Length])));
    }

    private static double[] Si(CalculationInfo info, IReadOnlyList<double> inputs) =>
        [.. inputs.Select((value, i) => info.Inputs[i].Unit.ToSi(value))];
}
