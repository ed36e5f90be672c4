using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Recomputing;

namespace Lidoff.Evidence.Tests.Recomputing;

public sealed class RecomputeGraphTests
{
    private static Sheet Filled()
    {
        var sheet = new Sheet();
        for (var k = 0; k < 6; k++) sheet.Graph.Set(sheet.Readings, k, 4);
        _ = sheet.Answer;
        sheet.Graph.ResetCounts();
        sheet.Ran.Clear();
        return sheet;
    }

    [Fact]
    public void A_value_that_comes_out_equal_stops_the_rest()
    {
        var sheet = Filled();
        sheet.Graph.Set(sheet.Readings, 1, 5);
        Assert.Equal(4, sheet.Answer);
        Assert.Equal(["half 1"], sheet.Ran);
        Assert.Equal(new StepCounts("half", 1, 1, 0, 1), sheet.Graph.Counts("half"));
        Assert.Equal(1, sheet.Graph.Counts("group").Checked);
        Assert.Equal(new StepCounts("top", 0, 0, 1, 0), sheet.Graph.Counts("top"));
    }

    [Fact]
    public void What_nobody_read_costs_nothing()
    {
        var sheet = Filled();
        sheet.Graph.Set(sheet.Readings, 2, 40);
        Assert.Equal(4, sheet.Answer);
        Assert.Empty(sheet.Ran);
        Assert.Equal(new StepCounts("top", 0, 0, 0, 1), sheet.Graph.Counts("top"));
    }

    [Fact]
    public void Setting_an_equal_value_is_no_edit()
    {
        var sheet = Filled();
        var revision = sheet.Graph.Revision;
        Assert.False(sheet.Graph.Set(sheet.Readings, 1, 4));
        Assert.False(sheet.Graph.Remove(sheet.Readings, 77));
        Assert.Equal(revision, sheet.Graph.Revision);
    }

    [Fact]
    public void A_key_that_goes_is_not_read_again()
    {
        var sheet = Filled();
        sheet.Graph.Remove(sheet.Readings, 4);
        Assert.Equal(2, sheet.Answer);
        Assert.DoesNotContain("half 4", sheet.Ran);
    }

    [Fact]
    public void One_edit_in_a_large_dossier_runs_three_steps()
    {
        // 200 spots with 25 entries each: the size issue 2 asks of one edit.
        var graph = new RecomputeGraph();
        var entries = new InputTable<(int Spot, int Entry), int>("entries");
        var spots = new InputTable<int, ValueList<int>>("spots");
        var one = new Call<(int Spot, int Entry), int>("entry", (k, r) => r.Read(entries, k) * 2);
        var spot = new Call<int, int>("spot", (k, r) => r.Read(spots, k).Sum(e => r.Read(one, (k, e))));
        var all = new Call<string, int>("all", (_, r) => r.Keys(spots).Sum(s => r.Read(spot, s)));
        for (var s = 0; s < 200; s++)
        {
            graph.Set(spots, s, Enumerable.Range(0, 25).ToValueList());
            for (var e = 0; e < 25; e++) graph.Set(entries, (s, e), 1);
        }
        Assert.Equal(10_000, graph.Get(all, ""));
        Assert.Equal([("all", 1), ("entry", 5000), ("spot", 200)], graph.Counts().Select(c => (c.Step, (int)c.Computed)));

        graph.ResetCounts();
        graph.Set(entries, (100, 7), 3);
        Assert.Equal(10_004, graph.Get(all, ""));
        Assert.Equal([("all", 1), ("entry", 1), ("spot", 1)], graph.Counts().Select(c => (c.Step, (int)c.Computed)));
    }

    [Fact]
    public void An_absent_input_is_a_read_too()
    {
        var graph = new RecomputeGraph();
        var names = new InputTable<string, string>("names");
        var greet = new Call<string, string>("greet", (k, r) => r.TryRead(names, k, out var name) ? name : "nobody");
        Assert.Equal("nobody", graph.Get(greet, "a"));
        graph.Set(names, "b", "Bo");
        Assert.Equal("nobody", graph.Get(greet, "a"));
        Assert.Equal(1, graph.Counts("greet").Computed);
        graph.Set(names, "a", "Ada");
        Assert.Equal("Ada", graph.Get(greet, "a"));
        graph.Remove(names, "a");
        Assert.Equal("nobody", graph.Get(greet, "a"));
    }

    [Fact]
    public void Keys_come_in_ordinal_order_whatever_the_order_of_setting()
    {
        var graph = new RecomputeGraph();
        var names = new InputTable<string, int>("names");
        foreach (var key in new[] { "b", "ä", "B", "a", "_" }) graph.Set(names, key, 1);
        var keys = new Call<int, string>("keys", (_, r) => string.Concat(r.Keys(names)));
        Assert.Equal("B_abä", graph.Get(keys, 0));
    }

    [Fact]
    public void A_circle_is_found_when_first_run_and_when_an_edit_closes_it()
    {
        var graph = new RecomputeGraph();
        var closes = new InputTable<int, bool>("closes");
        Call<int, int>? second = null;
        var first = new Call<int, int>("first", (k, r) => r.Read(second!, k) + 1);
        second = new("second", (k, r) => r.Read(closes, k) ? r.Read(first, k) : 0);
        graph.Set(closes, 1, true);
        graph.Set(closes, 2, false);
        var thrown = Assert.Throws<ArgumentException>(() => graph.Get(first, 1));
        Assert.Contains("step 'first' not to read itself, directly or through others (key 1)", thrown.Message, StringComparison.Ordinal);
        Assert.Equal(1, graph.Get(first, 2));
        graph.Set(closes, 2, true);
        Assert.Throws<ArgumentException>(() => graph.Get(first, 2));
        graph.Set(closes, 2, false);
        Assert.Equal(1, graph.Get(first, 2));
    }

    [Fact]
    public void What_a_step_throws_comes_through_and_the_graph_goes_on()
    {
        var graph = new RecomputeGraph();
        var values = new InputTable<int, int>("values");
        var inverse = new Call<int, int>("inverse", (k, r) => 100 / r.Read(values, k));
        var above = new Call<int, int>("above", (k, r) => r.Read(inverse, k) + 1);
        graph.Set(values, 1, 5);
        Assert.Equal(21, graph.Get(above, 1));
        graph.Set(values, 1, 0);
        Assert.Throws<DivideByZeroException>(() => graph.Get(above, 1));
        Assert.Throws<DivideByZeroException>(() => graph.Get(above, 1));
        graph.Set(values, 1, 10);
        Assert.Equal(11, graph.Get(above, 1));
    }

    [Fact]
    public void Reads_that_would_go_unnoted_throw()
    {
        var graph = new RecomputeGraph();
        var values = new InputTable<int, int>("values");
        graph.Set(values, 1, 5);
        var lazy = new Call<int, IEnumerable<int>>("lazy", (k, r) => Enumerable.Range(k, 1).Select(i => r.Read(values, i)));
        var around = new Call<int, IEnumerable<int>>("around", (k, _) => graph.Get(lazy, k));
        var writes = new Call<int, bool>("writes", (k, _) => graph.Set(values, k, 9));
        Assert.Throws<ArgumentException>(() => graph.Get(lazy, 1).ToList());
        Assert.Throws<ArgumentException>(() => graph.Get(around, 1));
        Assert.Throws<ArgumentException>(() => graph.Get(writes, 1));
    }

    [Fact]
    public void Two_things_under_one_name_throw()
    {
        var graph = new RecomputeGraph();
        graph.Set(new InputTable<int, int>("values"), 1, 1);
        Assert.Throws<ArgumentException>(() => graph.Set(new InputTable<int, int>("values"), 1, 1));
        graph.Get(new Call<int, int>("step", (k, _) => k), 1);
        Assert.Throws<ArgumentException>(() => graph.Get(new Call<int, int>("step", (k, _) => k), 1));
    }

    [Fact]
    public async Task Readers_on_other_threads_see_whole_revisions()
    {
        var graph = new RecomputeGraph();
        var values = new InputTable<int, int>("values");
        graph.Set(values, 0, 0);
        var pair = new Call<int, (int, int)>("pair", (_, r) => (r.Read(values, 0), r.Read(values, 0)));
        var seen = new List<int>();
        var reader = Task.Run(() =>
        {
            while (seen.Count == 0 || seen[^1] < 2000)
            {
                var (a, b) = graph.Get(pair, 0);
                Assert.Equal(a, b);
                seen.Add(a);
            }
        });
        for (var i = 1; i <= 2000; i++) graph.Set(values, 0, i);
        await reader;
        Assert.Equal(seen.Order(), seen);
    }

    /// <summary>A step from a function.</summary>
    private sealed class Call<TKey, TValue>(string name, Func<TKey, IReads, TValue> compute) : Step<TKey, TValue>
        where TKey : notnull
    {
        public override string Name => name;

        public override TValue Compute(TKey key, IReads reads) => compute(key, reads);
    }
}
