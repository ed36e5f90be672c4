using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Grading;
using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Quantities;
using Lidoff.Numbers.Spreads;
using Lidoff.Reckoning.Bound;

namespace Lidoff.Reckoning.Tests;

public sealed class ReckonBookTests
{
    [Fact]
    public void A_length_of_the_dossier_carries_value_doubt_grade_and_support()
    {
        var source = new FakeSource { ["length:B1:long side"] = Sourced(Uncertain.Normal(0.0233, 0.0001), Dimensions.Length, Grade.E3, 7) };
        var bound = Single(
            source,
            Bind(1, "R1", "energy_density", ("energy", "1.47 Wh", ""), ("length", "", "length:B1:long side"), ("width", "22.5", ""), ("thickness", "5", "")));
        // Cambridge watch cell: 561 Wh/L. One typed input brings it to what memory is worth.
        Assert.Equal(561, bound.Result!.Info.Unit.FromSi(bound.Result.Value.Value), 0.5);
        Assert.Equal(561 * 0.1 / 23.3, bound.Result.Info.Unit.SpanFromSi(bound.Result.Value.FirstOrderU), 0.01);
        Assert.Equal(Grade.E1, bound.Grade);
        Assert.Equal([Id(1), Id(7)], bound.RestsOn);
        Assert.Equal("length:B1:long side", bound.Result.Inputs[1].Given);
    }

    [Fact]
    public void A_checked_formula_never_lifts_a_number_above_two_lines()
    {
        var source = new FakeSource
        {
            ["a"] = Sourced(Uncertain.Exact(3600), Units.WattHour.Dimension, Grade.E5, 7),
            ["b"] = Sourced(Uncertain.Exact(4), Dimensions.Voltage, Grade.E4, 8),
        };
        Assert.Equal(Grade.E3, Single(source, Bind(1, "R1", "capacity_from_energy", ("energy", "", "a"), ("voltage", "", "b"))).Grade);
    }

    [Fact]
    public void One_reckoning_rests_on_another_whatever_their_order()
    {
        var book = ReckonBook.Reckon(
            [
                Bind(1, "R1", "runtime", ("capacity", "", "R10"), ("sleep_current", "10 µA", "")),
                Bind(2, "R10", "capacity_from_energy", ("energy", "0.45 Wh", ""), ("voltage", "3.7±0.05", "")),
            ],
            new FakeSource());
        Assert.Equal(["R1", "R10"], book.Select(each => each.Binding.Reckoning));
        Assert.Equal(0.45 / 3.7 / 10e-6, book[0].Result!.Info.Unit.FromSi(book[0].Result!.Value.Value), 1e-6);
        Assert.Equal(0.05 / 3.7, book[0].Result!.Value.U / book[0].Result!.Value.Value, 0.001);
        Assert.Equal([Id(1), Id(2)], book[0].RestsOn);
    }

    [Fact]
    public void A_circle_is_said_and_ends()
    {
        var book = ReckonBook.Reckon(
            [
                Bind(1, "R1", "runtime", ("capacity", "", "R2"), ("sleep_current", "1", "")),
                Bind(2, "R2", "capacity_from_energy", ("energy", "", "R3"), ("voltage", "3.7", "")),
                Bind(3, "R3", "energy_from_capacity", ("capacity", "", "R2"), ("voltage", "3.7", "")),
            ],
            new FakeSource());
        Assert.All(book, each => Assert.Null(each.Result));
        Assert.Equal("\"capacity\" comes from \"R2\", which rests on this very reckoning.", Assert.Single(book[2].Faults).Say);
    }

    [Fact]
    public void What_is_missing_wrong_or_of_another_kind_is_said_at_once()
    {
        var source = new FakeSource { ["t"] = Sourced(Uncertain.Exact(1), Dimensions.Time, Grade.E2, 7) };
        var bound = Single(source, Bind(1, "R1", "energy_density", ("energy", "", "t"), ("length", "", "length:B1:x"), ("with", "22.5", ""), ("thickness", "0", "")));
        Assert.Equal(
            [
                "energy_density has no input \"with\". Is it width?",
                "\"energy\" wants energy, for example in Wh, but \"t\" is time.",
                "\"length\" comes from \"length:B1:x\", and nothing of that name has a value.",
                "\"width\" is missing: outer width, from 1 to 1000 mm.",
                "\"thickness\" should be from 0.2 to 200 mm; 0 mm is outside.",
            ],
            bound.Faults.Select(fault => fault.Say));
        Assert.Equal(Grade.E0, bound.Grade);
    }

    [Fact]
    public void Two_inputs_under_one_reference_rise_and_fall_together()
    {
        var source = new FakeSource { ["v"] = Sourced(Uncertain.Normal(4, 0.1), Dimensions.Voltage, Grade.E2, 7) };
        var bound = Single(source, Bind(1, "R1", "regulator_efficiency", ("input_voltage", "", "v"), ("output_voltage", "", "v")));
        // The ratio of a thing to itself has no doubt.
        Assert.Equal(0, bound.Result!.Value.U, 1e-12);
        Assert.Equal(1, bound.Result.Value.Value, 1e-12);
    }

    [Fact]
    public void The_last_entry_of_a_designator_counts_and_equal_inputs_give_equal_results()
    {
        Sighting<ReckonBinding>[] live =
        [
            Bind(1, "R1", "capacity_from_energy", ("energy", "1", ""), ("voltage", "3.7", "")),
            Bind(2, "R1", "capacity_from_energy", ("energy", "2±0.1", ""), ("voltage", "3.7", "")),
        ];
        var first = Single(new FakeSource(), live);
        Assert.Equal(2e3 / 3.7, first.Result!.Info.Unit.FromSi(first.Result.Value.Value), 1e-9);
        Assert.Equal(first, Single(new FakeSource(), live));
        Assert.NotEqual(first, Single(new FakeSource(), live[0]));
    }

    private static BoundReckoning Single(IInputSource source, params Sighting<ReckonBinding>[] live) => Assert.Single(ReckonBook.Reckon(live, source));

    private static SourcedInput Sourced(Uncertain value, Dimension dimension, Grade grade, int entry) => new(value, dimension, grade, [Id(entry)]);

    private static Sighting<ReckonBinding> Bind(int entry, string name, string calculation, params (string Key, string Typed, string From)[] inputs) => new(
        new Entry(Id(entry), "d", "reckon", 1, "c", entry, null, [], [], DateTimeOffset.UnixEpoch, "", ""),
        "",
        new(name, calculation, inputs.Select(each => new BoundInput(each.Key, each.Typed, each.From)).ToValueList(), ""));

    private static EntryId Id(int n) => new(n.ToString("x64", System.Globalization.CultureInfo.InvariantCulture));

    private sealed class FakeSource : Dictionary<string, SourcedInput>, IInputSource
    {
        public Outcome<SourcedInput> Find(string reference, string where) =>
            TryGetValue(reference, out var found) ? found : ReckoningSentences.NothingThere(where, reference);
    }
}
