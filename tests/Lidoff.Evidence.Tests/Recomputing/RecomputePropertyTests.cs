using CsCheck;
using Lidoff.Evidence.Recomputing;

namespace Lidoff.Evidence.Tests.Recomputing;

/// <summary>Design §4: full rebuild = incremental, for any edits, asked for at any time.</summary>
public sealed class RecomputePropertyTests
{
    private static readonly long Iterations = Environment.GetEnvironmentVariable("LIDOFF_LONG") == "1" ? 50_000 : 500;

    // (key, value, ask): a value below zero removes the key; ask says whether the answer is wanted after this edit.
    private static readonly Gen<(int Key, int Value, bool Ask)[]> Edits =
        Gen.Select(Gen.Int[0, 11], Gen.Int[-3, 12], Gen.Bool).Array[1, 40];

    [Fact]
    public void Any_edits_give_what_a_full_rebuild_and_a_plain_function_give() => Edits.Sample(
        edits =>
        {
            var sheet = new Sheet();
            var model = new SortedDictionary<int, int>();
            foreach (var (key, value, ask) in edits)
            {
                Apply(sheet, model, key, value);
                if (ask && sheet.Answer != Sheet.Plain(model)) return false;
            }
            var fresh = new Sheet();
            foreach (var (key, value) in model.Reverse()) fresh.Graph.Set(fresh.Readings, key, value);
            return sheet.Answer == Sheet.Plain(model)
                && sheet.Answer == fresh.Answer
                && sheet.Graph.KeyOf(sheet.Top, "all") == fresh.Graph.KeyOf(fresh.Top, "all");
        },
        iter: Iterations);

    [Fact]
    public void A_changed_reading_runs_nothing_but_what_hangs_on_it() => Edits.Sample(
        edits =>
        {
            var sheet = new Sheet();
            var model = new SortedDictionary<int, int>();
            foreach (var (key, value, _) in edits)
            {
                Ask(sheet);
                sheet.Ran.Clear();
                var stays = model.ContainsKey(key) && value >= 0;
                Apply(sheet, model, key, value);
                Ask(sheet);
                if (stays && sheet.Ran.Except(["half " + key, "group " + (key % 3), "top"]).Any()) return false;
                if (sheet.Ran.Distinct().Count() != sheet.Ran.Count) return false;
            }
            return true;
        },
        iter: Iterations);

    private static void Ask(Sheet sheet)
    {
        _ = sheet.Answer;
        for (var g = 0; g < 3; g++) sheet.Graph.Get(sheet.Group, g);
    }

    private static void Apply(Sheet sheet, SortedDictionary<int, int> model, int key, int value)
    {
        if (value < 0)
        {
            model.Remove(key);
            sheet.Graph.Remove(sheet.Readings, key);
        }
        else
        {
            model[key] = value;
            sheet.Graph.Set(sheet.Readings, key, value);
        }
    }
}
