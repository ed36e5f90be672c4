using System.Diagnostics;
using System.Text;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Store;
using Lidoff.TestSupport;

namespace Lidoff.Evidence.Tests.Folding;

public class FoldTests
{
    private static MemoryEntryStore Store(string writer = "ada") => new(Seeds.Of(writer), new SteppingClock());

    private static EntryId Add(IEntryStore store, params EntryDraft[] drafts) => store.Append(drafts).Value[^1].Id;

    private static IDossierView View(IEntryStore store) => Histories.FoldOf(Histories.Entries(store));

    private static string[] Words(IEntryStore store) => View(store).Live<Word>().Select(w => w.Value.Text).ToArray();

    private static void Exchange(IEntryStore a, IEntryStore b)
    {
        Assert.True(a.Merge(Histories.Entries(b), ErasureRule.Follow).Ok);
        Assert.True(b.Merge(Histories.Entries(a), ErasureRule.Follow).Ok);
    }

    [Fact]
    public void A_better_entry_takes_the_place_of_another()
    {
        using var store = Store();
        var old = Add(store, WordKind.Of("6.1"));
        var supersede = Add(store, WordKind.Of("6.01"), WordKind.Supersede(old, 0));
        Assert.Equal(["6.01"], Words(store));
        var fate = View(store).Find(old)!;
        Assert.Equal((EntryFate.Superseded, supersede), (fate.Fate, Assert.Single(fate.By)));
    }

    [Fact]
    public void Undoing_a_supersede_brings_the_old_one_back_beside_the_new()
    {
        using var store = Store();
        var old = Add(store, WordKind.Of("old"));
        var supersede = Add(store, WordKind.Of("new"), WordKind.Supersede(old, 0));
        Add(store, WordKind.Undo(supersede));
        Assert.Equal(["old", "new"], Words(store));
    }

    [Fact]
    public void Undoing_the_better_entry_alone_brings_the_old_one_back()
    {
        using var store = Store();
        var old = Add(store, WordKind.Of("old"));
        var better = store.Append([WordKind.Of("new"), WordKind.Supersede(old, 0)]).Value[0].Id;
        Add(store, WordKind.Undo(better));
        Assert.Equal(["old"], Words(store));
    }

    [Fact]
    public void Undoing_an_undo_redoes()
    {
        using var store = Store();
        var word = Add(store, WordKind.Of("a"));
        var undo = Add(store, WordKind.Undo(word));
        Assert.Empty(Words(store));
        var redo = Add(store, WordKind.Undo(undo));
        Assert.Equal(["a"], Words(store));
        Add(store, WordKind.Undo(redo));
        Assert.Empty(Words(store));
    }

    [Fact]
    public void Ten_thousand_undos_of_undos_do_not_break_anything()
    {
        using var store = Store();
        var drafts = new List<EntryDraft> { WordKind.Of("a") };
        for (var i = 0; i < 10_000; i++) drafts.Add(EntryDraft.Of("tag", new UndoKind()) with { Targets = [DraftTarget.OfDraft(i)] });
        store.Append(drafts);
        Assert.Equal(["a"], Words(store));
    }

    [Fact]
    public void An_undo_still_holds_after_a_merge_and_can_be_taken_back_there()
    {
        using var ada = Store();
        using var ben = Store("ben");
        var word = Add(ada, WordKind.Of("a"));
        Exchange(ada, ben);
        var undo = Add(ada, WordKind.Undo(word));
        Add(ben, WordKind.Of("b"));
        Exchange(ada, ben);
        Assert.Equal(["b"], Words(ben));
        Add(ben, WordKind.Undo(undo));
        Exchange(ada, ben);
        Assert.Equal(["a", "b"], Words(ada).Order());
        Assert.Equal(Histories.Spell(View(ada)), Histories.Spell(View(ben)));
    }

    [Fact]
    public void Two_hands_that_undo_the_same_entry_must_both_be_taken_back()
    {
        using var ada = Store();
        using var ben = Store("ben");
        var word = Add(ada, WordKind.Of("a"));
        Exchange(ada, ben);
        var first = Add(ada, WordKind.Undo(word));
        var second = Add(ben, WordKind.Undo(word));
        Exchange(ada, ben);
        Assert.Equal(2, View(ada).Find(word)!.By.Count);
        Add(ada, WordKind.Undo(first));
        Assert.Empty(Words(ada));
        Add(ada, WordKind.Undo(second));
        Assert.Equal(["a"], Words(ada));
    }

    [Fact]
    public void Concurrent_supersedes_both_stay_live_and_are_reported()
    {
        using var ada = Store();
        using var ben = Store("ben");
        var old = Add(ada, WordKind.Of("6.1"));
        Exchange(ada, ben);
        var byAda = ada.Append([WordKind.Of("6.01"), WordKind.Supersede(old, 0)]).Value;
        var byBen = ben.Append([WordKind.Of("5.98"), WordKind.Supersede(old, 0)]).Value;
        Exchange(ada, ben);
        Assert.Equal(["5.98", "6.01"], Words(ada).Order());
        var report = Assert.Single(View(ada).Concurrent);
        Assert.Equal(old, report.Old);
        Assert.Equal(new[] { byAda[1].Id, byBen[1].Id }.Order(), report.By.Order());
        Assert.Equal(new[] { byAda[0].Id, byBen[0].Id }.Order(), report.Replacements.Order());

        // Whoever then settles it ends the quarrel.
        Add(ada, WordKind.Supersede(byBen[0].Id, byAda[0].Id));
        Add(ada, WordKind.Undo(byBen[1].Id));
        Assert.Equal(["6.01"], Words(ada));
        Assert.Empty(View(ada).Concurrent);
    }

    [Fact]
    public void Replacing_the_oldest_again_with_the_first_replacement_in_sight_replaces_that_too()
    {
        using var store = Store();
        var old = Add(store, WordKind.Of("a"));
        Add(store, WordKind.Of("b"), WordKind.Supersede(old, 0));
        Add(store, WordKind.Of("c"), WordKind.Supersede(old, 0));
        Assert.Equal(["c"], Words(store));
        Assert.Empty(View(store).Concurrent);
    }

    [Fact]
    public void A_control_can_not_take_a_sightings_place()
    {
        using var store = Store();
        var word = Add(store, WordKind.Of("a"));
        var undo = Add(store, WordKind.Undo(Add(store, WordKind.Of("b"))));
        Add(store, WordKind.Supersede(word, undo));
        Assert.Equal(["a"], Words(store));
    }

    [Fact]
    public void Swapping_back_makes_the_old_one_count_again()
    {
        using var store = Store();
        var old = Add(store, WordKind.Of("a"));
        var better = store.Append([WordKind.Of("b"), WordKind.Supersede(old, 0)]).Value[0].Id;
        Add(store, WordKind.Supersede(better, old));
        Assert.Equal(["a"], Words(store));
    }

    [Fact]
    public void Erasing_leaves_a_tombstone_that_no_undo_brings_back()
    {
        using var store = Store();
        var word = Add(store, WordKind.Of("former owner"));
        var erase = Add(store, WordKind.Erase(word));
        Add(store, WordKind.Undo(erase));
        Assert.Empty(Words(store));
        var tombstone = View(store).Find(word)!;
        Assert.Equal((EntryFate.Erased, erase), (tombstone.Fate, Assert.Single(tombstone.By)));
        Assert.Null(tombstone.Payload);
        Assert.Empty(tombstone.Faults);
    }

    [Fact]
    public void Erasing_an_entry_that_is_already_folded_takes_its_payload_from_the_fold_too()
    {
        using var store = Store();
        var word = Add(store, WordKind.Of("former owner"));
        var fold = new Fold("tag", WordKind.Kinds);
        fold.Apply(Histories.Entries(store));
        var erase = store.Append([WordKind.Erase(word)]).Value;
        var change = fold.Apply(erase);
        Assert.Equal(word, Assert.Single(change.Removed).Id);
        Assert.Null(fold.View.Find(word)!.Payload);
    }

    [Fact]
    public void Unknown_kinds_and_newer_versions_are_kept_and_shown_as_such()
    {
        using var store = Store();
        Add(store, new EntryDraft("tag", "hologram", 1, "{\"x\":1}"u8.ToArray()));
        Add(store, WordKind.Of("a") with { KindVersion = 2 });
        Add(store, WordKind.Of("b"));
        Assert.Equal([EntryFate.Unknown, EntryFate.Unknown, EntryFate.Live], View(store).Entries.Select(e => e.Fate));
        Assert.Contains("\"x\":1", Encoding.UTF8.GetString(View(store).Entries[0].Payload!.Value.Span), StringComparison.Ordinal);
    }

    [Fact]
    public void A_refused_payload_is_kept_with_its_faults()
    {
        using var store = Store();
        Add(store, new EntryDraft("tag", "word", 1, "{\"text\":7}"u8.ToArray()));
        var entry = Assert.Single(View(store).Entries);
        Assert.Equal(EntryFate.Refused, entry.Fate);
        Assert.Equal("\"text\" should be a text of 1 to 100 characters, but here it is 7.", Assert.Single(entry.Faults).Say);
        Assert.NotNull(entry.Payload);
    }

    [Theory]
    [InlineData(new byte[] { 0xFF }, "Line 1, byte 9: this text is not valid UTF-8.")]
    [InlineData(new byte[] { (byte)'a', (byte)'"', (byte)',', (byte)'"', (byte)'t', (byte)'e', (byte)'x', (byte)'t', (byte)'"', (byte)':', (byte)'"' }, "Line 1, byte 13: the key \"text\" stands here a second time.")]
    public void A_payload_from_elsewhere_that_is_no_text_is_refused_before_any_kind_sees_it(byte[] inside, string say)
    {
        var payload = (byte[])[.. "{\"text\":\""u8, .. inside, .. "\"}"u8];
        var header = Encoding.UTF8.GetBytes(
            $$"""{"format":1,"dossier":"tag","kind":"word","kind_version":1,"chain":"c","seq":1,"previous":null,"heads":[],"targets":[],"at":"2026-03-02T10:15:00Z","payload":"{{EntryCodec.Hash(payload)}}"}""");
        using var store = Store();
        store.Merge([new(EntryCodec.Read(header).Value, header, payload)], ErasureRule.Refuse);
        var entry = Assert.Single(View(store).Entries);
        Assert.Equal(EntryFate.Refused, entry.Fate);
        Assert.Equal($"The content of entry {entry.Entry.Id.Hex[..12]} cannot be read. {say}", Assert.Single(entry.Faults).Say);
    }

    [Fact]
    public void The_specimen_a_line_names_stands_beside_its_value()
    {
        using var store = Store();
        Add(store, EntryDraft.Of("tag", new WordKind(), json =>
        {
            json.WriteString("text", "a");
            json.WriteString("specimen", "B");
        }));
        Assert.Equal("B", Assert.Single(View(store).Live<Word>()).Specimen);
    }

    [Fact]
    public void New_entries_that_follow_everything_do_not_make_the_fold_sort_again()
    {
        using var store = Store();
        var fold = new Fold("tag", WordKind.Kinds);
        for (var i = 0; i < 50; i++)
        {
            Add(store, WordKind.Of("w" + i));
            fold.Apply(store.Read("tag", i).Value.Entries);
        }

        Assert.Equal(0, fold.Reorderings);
        Assert.Equal(50, fold.View.Live<Word>().Count);
    }

    [Fact]
    public void An_old_version_of_the_view_stays_as_it_was()
    {
        using var store = Store();
        var fold = new Fold("tag", WordKind.Kinds);
        var word = Add(store, WordKind.Of("a"));
        fold.Apply(Histories.Entries(store));
        var before = fold.View;
        Add(store, WordKind.Undo(word));
        fold.Apply(Histories.Entries(store));
        Assert.Single(before.Live<Word>());
        Assert.Equal(EntryFate.Live, before.Find(word)!.Fate);
        Assert.Empty(fold.View.Live<Word>());
    }

    /// <summary>Wide limits, so that a busy machine does not fail it; the measured times are far below.</summary>
    [Fact]
    public void Five_thousand_entries_fold_within_a_second_and_one_more_costs_next_to_nothing()
    {
        using var store = Store();
        var last = store.Append(Enumerable.Range(0, 4000).Select(i => WordKind.Of("w" + i)).ToList()).Value;
        store.Append(last.Take(500).Select(e => WordKind.Undo(e.Id)).ToList());
        store.Append(last.Skip(500).Take(500).Select((e, i) => WordKind.Supersede(e.Id, last[3000 + i].Id)).ToList());
        var entries = Histories.Entries(store);
        Assert.Equal(5000, entries.Count);
        Histories.FoldOf(entries);

        var watch = Stopwatch.StartNew();
        var fold = new Fold("tag", WordKind.Kinds);
        fold.Apply(entries);
        var full = watch.Elapsed;
        store.Append([WordKind.Of("one more")]);
        var fresh = store.Read("tag", 5000).Value.Entries;
        watch.Restart();
        fold.Apply(fresh);
        var one = watch.Elapsed;
        TestContext.Current.SendDiagnosticMessage($"fold of 5,000: {full.TotalMilliseconds:F1} ms, one more: {one.TotalMilliseconds:F3} ms");
        Assert.True(full < TimeSpan.FromSeconds(1), $"{full.TotalMilliseconds} ms");
        Assert.True(one < full / 4, $"{one.TotalMilliseconds} ms against {full.TotalMilliseconds} ms");
    }
}
