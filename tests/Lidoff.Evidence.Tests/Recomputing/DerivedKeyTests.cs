using Lidoff.Evidence.Recomputing;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Tests.Recomputing;

public sealed class DerivedKeyTests
{
    [Fact]
    public void The_key_moves_with_inputs_and_step_and_comes_back_with_them()
    {
        var sheet = new Sheet();
        for (var k = 0; k < 6; k++) sheet.Graph.Set(sheet.Readings, k, 4);
        var before = sheet.Graph.KeyOf(sheet.Group, 1);
        Assert.Matches("^[0-9a-f]{64}$", before);
        Assert.NotEqual(before, sheet.Graph.KeyOf(sheet.Group, 2));
        sheet.Graph.Set(sheet.Readings, 1, 5);
        Assert.NotEqual(before, sheet.Graph.KeyOf(sheet.Group, 1));
        sheet.Graph.Set(sheet.Readings, 1, 4);
        Assert.Equal(before, sheet.Graph.KeyOf(sheet.Group, 1));
    }

    [Fact]
    public void Parts_are_kept_apart()
    {
        Assert.NotEqual(DerivedKey.Of("ab", "c", "", []), DerivedKey.Of("a", "bc", "", []));
        Assert.NotEqual(DerivedKey.Of("s", "v", "k", ["ab"]), DerivedKey.Of("s", "v", "k", ["a", "b"]));
    }

    [Fact]
    public void A_table_without_a_hash_cannot_carry_a_key()
    {
        var graph = new RecomputeGraph();
        var table = new InputTable<int, int>("plain");
        graph.Set(table, 1, 1);
        var step = new Reads(table);
        Assert.Equal(1, graph.Get(step, 1));
        Assert.Throws<ArgumentException>(() => graph.KeyOf(step, 1));
    }

    [Fact]
    public void The_step_version_is_that_of_its_assembly_and_its_family()
    {
        var ours = StepVersion.Of(typeof(StepVersion).Assembly);
        Assert.Matches("^[0-9a-f]{64}$", ours);
        Assert.Equal(ours, StepVersion.Of(typeof(StepVersion).Assembly));
        Assert.NotEqual(ours, StepVersion.Of(typeof(Guard).Assembly));
        Assert.NotEqual(ours, StepVersion.Of(typeof(DerivedKeyTests).Assembly));
    }

    [Fact]
    public void A_long_diamond_is_hashed_once_a_place()
    {
        // 60 levels that each read the one below twice would take 2^60 hashes if each path were walked.
        var graph = new RecomputeGraph();
        var table = new InputTable<int, int>("base", v => "v" + v);
        graph.Set(table, 0, 1);
        var twice = new Twice(table);
        Assert.Matches("^[0-9a-f]{64}$", graph.KeyOf(twice, 60));
    }

    private sealed class Reads(InputTable<int, int> table) : Step<int, int>
    {
        public override string Name => "reads";

        public override int Compute(int key, IReads reads) => reads.Read(table, key);
    }

    private sealed class Twice(InputTable<int, int> table) : Step<int, int>
    {
        public override string Name => "twice";

        public override int Compute(int key, IReads reads) =>
            key <= 0 ? reads.Read(table, 0) : (reads.Read(this, key - 1) + reads.Read(this, key - 2)) % 1000;
    }
}
