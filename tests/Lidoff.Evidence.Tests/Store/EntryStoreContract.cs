using System.Text;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Store;
using Lidoff.Evidence.Tests.Folding;
using Lidoff.Numbers.Failing;
using Lidoff.TestSupport;

namespace Lidoff.Evidence.Tests.Store;

/// <summary>What every entry store must keep; one class below for each store there is.</summary>
public abstract class EntryStoreContract : IDisposable
{
    private readonly List<IEntryStore> opened = [];

    protected abstract IEntryStore Make(string writer);

    private IEntryStore Open(string writer = "ada")
    {
        var store = Make(writer);
        opened.Add(store);
        return store;
    }

    public void Dispose()
    {
        opened.ForEach(s => s.Dispose());
        CleanUp();
        GC.SuppressFinalize(this);
    }

    protected virtual void CleanUp()
    {
    }

    private static StoredEntry Add(IEntryStore store, EntryDraft draft) => Assert.Single(store.Append([draft]).Value);

    private static IReadOnlyList<StoredEntry> All(IEntryStore store) => store.Read().Value.Entries;

    private static string Text(StoredEntry entry) => Encoding.UTF8.GetString(entry.Payload!.Value.Span);

    [Fact]
    public void A_chain_counts_from_one_and_each_entry_names_the_one_before()
    {
        var store = Open();
        var batch = store.Append([WordKind.Of("a"), WordKind.Of("b")]).Value;
        var third = Add(store, WordKind.Of("c"));
        Assert.Equal([1, 2, 3], All(store).Select(e => e.Entry.Seq));
        Assert.Equal([null, batch[0].Id, batch[1].Id], All(store).Select(e => e.Entry.Previous));
        Assert.Equal(third.Id, Assert.Single(store.Heads("tag").Value));
    }

    [Fact]
    public void What_is_read_back_is_byte_for_byte_what_was_acknowledged()
    {
        var store = Open();
        var written = store.Append([WordKind.Of("µ Ω <b>"), WordKind.Of("b")]).Value;
        var read = All(store);
        Assert.Equal(written.Select(e => Convert.ToHexString(e.Bytes.Span)), read.Select(e => Convert.ToHexString(e.Bytes.Span)));
        Assert.Equal(written.Select(Text), read.Select(Text));
        Assert.All(read, e => Assert.Equal(e.Id.Hex, EntryCodec.Hash(e.Bytes.Span)));
        Assert.All(read, e => Assert.True(EntryCodec.Belongs(e.Entry, e.Payload!.Value.Span)));
    }

    [Fact]
    public void Equal_payloads_have_different_hashes_so_that_one_can_be_erased_alone()
    {
        var store = Open();
        var both = store.Append([WordKind.Of("same"), WordKind.Of("same")]).Value;
        Assert.NotEqual(both[0].Entry.PayloadHash, both[1].Entry.PayloadHash);
        Add(store, WordKind.Erase(both[0].Id));
        Assert.Equal([true, false, false], All(store).Select(e => e.Payload is null));
    }

    [Fact]
    public void Each_dossier_has_a_chain_of_its_own()
    {
        var store = Open();
        store.Append([WordKind.Of("a", "tag"), WordKind.Of("b", "band"), WordKind.Of("c", "tag")]);
        Assert.Equal(["band", "tag"], store.Dossiers().Value);
        Assert.Equal([1], store.Read("band").Value.Entries.Select(e => e.Entry.Seq));
        Assert.Equal([1, 2], store.Read("tag").Value.Entries.Select(e => e.Entry.Seq));
        Assert.All(All(store), e => Assert.Empty(e.Entry.Heads));
    }

    [Fact]
    public void Reading_after_a_number_brings_only_what_came_since()
    {
        var store = Open();
        Add(store, WordKind.Of("a"));
        var upTo = store.Read("tag").Value.UpTo;
        var later = Add(store, WordKind.Of("b"));
        var slice = store.Read("tag", upTo).Value;
        Assert.Equal(later.Id, Assert.Single(slice.Entries).Id);
        Assert.Empty(store.Read("tag", slice.UpTo).Value.Entries);
        Assert.Equal(slice.UpTo, store.Read("tag", slice.UpTo).Value.UpTo);
    }

    [Fact]
    public void One_bad_draft_stops_its_whole_batch_and_every_fault_is_named()
    {
        var store = Open();
        var nobody = new EntryId(new string('0', 64));
        var outcome = store.Append([WordKind.Of("a"), WordKind.Of("b", "No Such/Name"), WordKind.Undo(nobody)]);
        Assert.Equal(
            [
                "\"No Such/Name\" cannot be a dossier's short name: use 1 to 64 of a-z, 0-9, - and _, beginning with a letter or digit.",
                "Dossier \"tag\" has no entry 000000000000.",
            ],
            outcome.Faults.Select(f => f.Say));
        Assert.Empty(All(store));
        Assert.Empty(store.Heads("tag").Value);
    }

    [Fact]
    public void A_target_of_another_dossier_is_no_target()
    {
        var store = Open();
        var elsewhere = Add(store, WordKind.Of("a", "band"));
        Assert.Equal($"Dossier \"tag\" has no entry {elsewhere.Id.Hex[..12]}.", Assert.Single(store.Append([WordKind.Undo(elsewhere.Id)]).Faults).Say);
    }

    [Fact]
    public void The_last_check_can_still_stop_a_batch()
    {
        var store = Open();
        Assert.Equal("no", Assert.Single(store.Append([WordKind.Of("a")], () => new Fault("", "", "no")).Faults).Say);
        Assert.Empty(All(store));
    }

    [Fact]
    public void An_entry_is_found_by_the_beginning_of_its_id()
    {
        var store = Open();
        var entry = Add(store, WordKind.Of("a"));
        Assert.Equal(entry.Id, Assert.Single(store.Find("tag", entry.Id.Hex[..8]).Value));
        Assert.Equal(entry.Id, Assert.Single(store.Find("tag", entry.Id.Hex).Value));
        Assert.Empty(store.Find("band", entry.Id.Hex[..8]).Value);
        Assert.Empty(store.Find("tag", "'; DROP TABLE entries; --").Value);
    }

    [Fact]
    public void A_merge_brings_everything_over_and_a_second_one_nothing()
    {
        var (here, there) = (Open("ada"), Open("ben"));
        Add(here, WordKind.Of("a"));
        Add(there, WordKind.Of("b"));
        Add(there, WordKind.Of("c"));
        Assert.Equal(new MergeSummary(2, 0, 0), here.Merge(All(there), ErasureRule.Refuse).Value);
        Assert.Equal(new MergeSummary(0, 2, 0), here.Merge(All(there), ErasureRule.Refuse).Value);
        Assert.Equal(2, here.Heads("tag").Value.Count);
    }

    [Fact]
    public void After_a_merge_the_next_entry_names_the_heads_it_has_seen_once()
    {
        var (here, there) = (Open("ada"), Open("ben"));
        Add(here, WordKind.Of("a"));
        var other = Add(there, WordKind.Of("b"));
        here.Merge(All(there), ErasureRule.Refuse);
        Assert.Equal(other.Id, Assert.Single(Add(here, WordKind.Of("c")).Entry.Heads));
        Assert.Empty(Add(here, WordKind.Of("d")).Entry.Heads);
        Assert.Single(here.Heads("tag").Value);
    }

    [Fact]
    public void A_fork_of_a_chain_is_refused_whole_and_named()
    {
        // The same seed in two workspaces is what a restored disk image of a running writer would do.
        var (here, there) = (Open("ada"), Open("ada"));
        var mine = Add(here, WordKind.Of("a"));
        var theirs = Add(there, WordKind.Of("another"));
        Add(there, WordKind.Of("and on"));
        var fault = Assert.Single(here.Merge(All(there), ErasureRule.Follow).Faults);
        Assert.Equal(
            $"Chain {mine.Entry.Chain} has two different entries number 1: {mine.Id.Hex[..12]} here and {theirs.Id.Hex[..12]} coming in. " +
            "A chain has one writer, so one of the two is not what it claims; nothing was taken in.",
            fault.Say);
        Assert.Single(All(here));
    }

    [Fact]
    public void A_merge_with_a_gap_is_refused()
    {
        var (here, there) = (Open("ada"), Open("ben"));
        var first = Add(there, WordKind.Of("a"));
        var second = Add(there, WordKind.Of("b"));
        var fault = Assert.Single(here.Merge([second], ErasureRule.Refuse).Faults);
        Assert.Equal($"Entry {second.Id.Hex[..12]} follows entry {first.Id.Hex[..12]}, which is neither here nor coming in; nothing was taken in.", fault.Say);
        Assert.Empty(All(here));
    }

    [Fact]
    public void A_payload_that_is_not_what_its_hash_says_is_refused()
    {
        var (here, there) = (Open("ada"), Open("ben"));
        var entry = Add(there, WordKind.Of("a"));
        var lie = entry with { Payload = "{\"text\":\"b\"}"u8.ToArray() };
        Assert.Equal($"The content of entry {entry.Id.Hex[..12]} is not what its hash says; nothing was taken in.", Assert.Single(here.Merge([lie], ErasureRule.Refuse).Faults).Say);
        var hole = entry with { Payload = null };
        Assert.Equal($"The content of entry {entry.Id.Hex[..12]} is missing and nobody erased it; nothing was taken in.", Assert.Single(here.Merge([hole], ErasureRule.Refuse).Faults).Say);
        Assert.Empty(All(here));
    }

    [Fact]
    public void A_merge_that_erases_asks_first_and_then_erases_here_too()
    {
        var (here, there) = (Open("ada"), Open("ben"));
        var entry = Add(here, WordKind.Of("former owner"));
        there.Merge(All(here), ErasureRule.Refuse);
        Add(there, WordKind.Erase(entry.Id));
        Assert.Equal(
            "What comes in would erase the content of 1 entries here, for good. Nothing was taken in; agree to erasing to go on.",
            Assert.Single(here.Merge(All(there), ErasureRule.Refuse).Faults).Say);
        Assert.NotNull(All(here)[0].Payload);
        Assert.Equal(new MergeSummary(1, 1, 1), here.Merge(All(there), ErasureRule.Follow).Value);
        Assert.Null(All(here)[0].Payload);
    }

    [Fact]
    public void What_was_erased_here_does_not_come_back_with_a_copy()
    {
        var (here, there) = (Open("ada"), Open("ben"));
        var entry = Add(here, WordKind.Of("former owner"));
        there.Merge(All(here), ErasureRule.Refuse);
        Add(here, WordKind.Erase(entry.Id));
        here.Merge(All(there), ErasureRule.Refuse);
        Assert.Null(All(here)[0].Payload);
    }

    [Fact]
    public void Files_that_only_erased_entries_name_are_told()
    {
        var store = Open();
        string[] hashes = [EntryCodec.Hash("x"u8), EntryCodec.Hash("y"u8)];
        var drafts = hashes.Append(hashes[1]).Select(h => FileKind.Draft("tag", new FileAdded("a.bin", h, 1, "", "add"))).ToList();
        var files = store.Append(drafts).Value;
        Assert.Empty(store.FilesLeftByErasing().Value);
        store.Append([WordKind.Erase(files[0].Id, files[1].Id)]);
        Assert.Equal([hashes[0]], store.FilesLeftByErasing().Value);
    }

    [Fact]
    public void Entries_of_a_newer_format_and_of_unknown_kinds_are_kept_and_carried_on()
    {
        var (here, there) = (Open("ada"), Open("ben"));
        var payload = Encoding.UTF8.GetBytes("{\"shape\":\"not known yet\"}");
        var header = Encoding.UTF8.GetBytes(
            $$"""{"format":7,"mood":"bright","dossier":"tag","kind":"hologram","kind_version":3,"chain":"{{new string('c', 32)}}","seq":1,"previous":null,"heads":[],"targets":[],"payload":"{{EntryCodec.Hash(payload)}}"}""");
        var future = new StoredEntry(EntryCodec.Read(header).Value, header, payload);
        there.Merge([future], ErasureRule.Refuse);
        here.Merge(All(there), ErasureRule.Refuse);
        var back = Assert.Single(All(here));
        Assert.Equal(header, back.Bytes.ToArray());
        Assert.Equal(payload, back.Payload!.Value.ToArray());
        Assert.Equal(7, back.Entry.Format);
    }

    [Fact]
    public void A_cache_answers_only_to_the_key_it_was_kept_under()
    {
        var store = Open();
        Assert.Null(store.Cached("tag", "k"));
        store.Cache("tag", "k", [1, 2, 3]);
        Assert.Equal([1, 2, 3], store.Cached("tag", "k")!);
        store.Cache("tag", "l", [4]);
        Assert.Null(store.Cached("tag", "k"));
        Assert.Equal([4], store.Cached("tag", "l")!);
    }

    [Fact]
    public void A_thousand_lines_go_in_as_one_batch()
    {
        var store = Open();
        var batch = store.Append(Enumerable.Range(0, 1000).Select(i => WordKind.Of("w" + i)).ToList()).Value;
        Assert.Equal(batch.Select(e => e.Id), All(store).Select(e => e.Id));
    }
}
