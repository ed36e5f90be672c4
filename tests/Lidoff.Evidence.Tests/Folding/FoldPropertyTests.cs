using CsCheck;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Store;
using Lidoff.TestSupport;

namespace Lidoff.Evidence.Tests.Folding;

public class FoldPropertyTests
{
    private static readonly long Rounds = Environment.GetEnvironmentVariable("LIDOFF_LONG") == "1" ? 5_000 : 400;

    private static MemoryEntryStore Copy(IEntryStore store, params IEntryStore[] merged)
    {
        var copy = new MemoryEntryStore(Seeds.Of("copy"), new SteppingClock());
        foreach (var from in merged.Prepend(store)) Assert.True(copy.Merge(Histories.Entries(from), ErasureRule.Follow).Ok);
        return copy;
    }

    private static string Spell(IEntryStore store) => Histories.Spell(Histories.FoldOf(Histories.Entries(store))) + string.Join(',', store.Heads("tag").Value);

    [Fact]
    public void Merging_is_commutative_associative_and_idempotent() => Histories.Steps.Sample(
        steps =>
        {
            var s = Histories.Play(steps);
            var expected = Spell(Copy(s[0], s[1], s[2]));
            Assert.Equal(expected, Spell(Copy(s[2], s[1], s[0])));
            Assert.Equal(expected, Spell(Copy(s[1], s[0], s[2])));
            Assert.Equal(expected, Spell(Copy(Copy(s[0], s[1]), s[2])));
            Assert.Equal(expected, Spell(Copy(s[0], Copy(s[1], s[2]))));
            Assert.Equal(expected, Spell(Copy(s[0], s[1], s[2], s[0], s[1], s[2])));
        },
        iter: Rounds);

    [Fact]
    public void Folding_bit_by_bit_in_any_order_equals_folding_all_at_once() => Gen.Select(Histories.Steps, Gen.Int[0, int.MaxValue], Gen.Int[1, 7]).Sample(
        (steps, shuffle, chunk) =>
        {
            var all = Histories.Union(Histories.Play(steps));
            var fold = new Fold("tag", WordKind.Kinds);
            // A fixed scramble by hash: the order depends on the generated number alone.
            foreach (var part in all.OrderBy(e => EntryCodec.Hash([.. BitConverter.GetBytes(shuffle), .. e.Bytes.Span]), StringComparer.Ordinal).Chunk(chunk)) fold.Apply(part);
            Assert.Equal(Histories.Spell(Histories.FoldOf(all)), Histories.Spell(fold.View));
        },
        iter: Rounds);

    [Fact]
    public void The_changes_told_lead_from_each_view_to_the_next() => Gen.Select(Histories.Steps, Gen.Int[1, 5]).Sample(
        (steps, chunk) =>
        {
            var fold = new Fold("tag", WordKind.Kinds);
            var counted = new HashSet<EntryId>();
            foreach (var part in Histories.Union(Histories.Play(steps)).Chunk(chunk))
            {
                var before = fold.View;
                var change = fold.Apply(part);
                foreach (var gone in change.Removed) Assert.True(counted.Remove(gone.Id));
                foreach (var come in change.Added) Assert.True(counted.Add(come.Id));
                Assert.Equal(Live(fold.View).ToHashSet(), counted);
                Assert.Equal(change.Added.Select(e => e.Id), fold.Since(before.Version)!.Added.Select(e => e.Id));
                if (!change.Types.Contains(typeof(Word)) && !change.Reordered) Assert.Same(before.Live<Word>(), fold.View.Live<Word>());
            }

            var whole = fold.Since(0)!;
            Assert.Equal(Live(fold.View).ToHashSet(), whole.Added.Select(e => e.Id).ToHashSet());
            Assert.Empty(whole.Removed);
        },
        iter: Rounds);

    /// <summary>The rule for undo as one would say it, checked by plain recursion instead of the fold's backward pass.</summary>
    [Fact]
    public void Undone_is_what_some_undo_names_that_is_not_itself_undone() => Histories.Steps.Sample(
        steps =>
        {
            var view = Histories.FoldOf(Histories.Union(Histories.Play(steps)));
            bool Undone(EntryId id) => view.Entries.Any(u => u.Entry.Kind == "undo" && u.Entry.Targets.Contains(id) && !Undone(u.Entry.Id));
            foreach (var entry in view.Entries.Where(e => e.Fate != EntryFate.Erased)) Assert.Equal(Undone(entry.Entry.Id), entry.Fate == EntryFate.Undone);
        },
        iter: Rounds);

    /// <summary>Whatever is superseded was so by somebody's hand that still counts, and something not superseded by it alone stays.</summary>
    [Fact]
    public void Superseding_never_leaves_a_dossier_without_any_of_the_rivals() => Histories.Steps.Sample(
        steps =>
        {
            var only = steps.Where(s => s.What is < 3 or > 4 and not 9).ToArray();
            if (only.Length == 0) return;
            var view = Histories.FoldOf(Histories.Union(Histories.Play(only)));
            Assert.Contains(view.Entries, e => e is { Fate: EntryFate.Live });
            Assert.NotEmpty(view.Live<Word>());
        },
        iter: Rounds);

    [Fact]
    public void The_fold_order_puts_everything_after_what_it_had_seen() => Histories.Steps.Sample(
        steps =>
        {
            var seen = new HashSet<EntryId>();
            foreach (var entry in Histories.FoldOf(Histories.Union(Histories.Play(steps))).Entries)
            {
                Assert.Subset(seen, CausalOrder.Links(entry.Entry).ToHashSet());
                seen.Add(entry.Entry.Id);
            }
        },
        iter: Rounds);

    [Fact]
    public void A_snapshot_gives_the_same_fold_and_a_spoilt_one_is_passed_over() => Gen.Select(Histories.Steps, Gen.Int[0, 10_000]).Sample(
        (steps, spot) =>
        {
            var all = Histories.Union(Histories.Play(steps));
            var fold = new Fold("tag", WordKind.Kinds);
            fold.Apply(all);
            var key = FoldSnapshot.Key([all[0].Id], WordKind.Kinds);
            var bytes = FoldSnapshot.Write(fold, key);
            var expected = Histories.Spell(fold.View);
            string Open(string by, byte[]? snapshot) => Histories.Spell(FoldSnapshot.Open("tag", WordKind.Kinds, all, by, snapshot).View);
            Assert.Equal(expected, Open(key, bytes));
            Assert.Equal(expected, Open("another key", bytes));
            Assert.Equal(expected, Open(key, bytes[..(spot % bytes.Length)]));
            bytes[spot % bytes.Length] ^= 1;
            Assert.Equal(expected, Open(key, bytes));
            Assert.Equal(expected, Open(key, null));
        },
        iter: Rounds);

    private static IEnumerable<EntryId> Live(IDossierView view) => view.Entries.Where(e => e.Fate == EntryFate.Live).Select(e => e.Entry.Id);
}
