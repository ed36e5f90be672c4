using CsCheck;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Store;
using Lidoff.TestSupport;

namespace Lidoff.Evidence.Tests.Folding;

/// <summary>Made-up histories: a few workspaces in which words are written, replaced, taken back and erased, and that merge now and then.</summary>
internal static class Histories
{
    private static readonly string[] Writers = ["ada", "ben", "cleo"];

    /// <summary>One step of a history: who acts, what is done, to which of the entries that he can see.</summary>
    public readonly record struct Step(int Who, int What, int Which, int Other);

    public static Gen<Step[]> Steps { get; } = Gen.Select(Gen.Int[0, 2], Gen.Int[0, 11], Gen.Int[0, 1000], Gen.Int[0, 1000], (a, b, c, d) => new Step(a, b, c, d)).Array[1, 40];

    /// <summary>Plays the steps; each workspace's store, with whatever it came to know.</summary>
    public static List<MemoryEntryStore> Play(Step[] steps)
    {
        var stores = Writers.Select(w => new MemoryEntryStore(Seeds.Of(w), new SteppingClock())).ToList();
        foreach (var step in steps) Play(stores, step);
        return stores;
    }

    /// <summary>All entries that any of them has, without the erased payloads.</summary>
    public static IReadOnlyList<StoredEntry> Union(IEnumerable<IEntryStore> stores)
    {
        using var all = new MemoryEntryStore(Seeds.Of("nobody"), new SteppingClock());
        foreach (var store in stores) Assert.True(all.Merge(Entries(store), ErasureRule.Follow).Ok);
        return Entries(all);
    }

    public static IReadOnlyList<StoredEntry> Entries(IEntryStore store) => store.Read("tag").Value.Entries;

    /// <summary>Everything a view says, as text.</summary>
    public static string Spell(IDossierView view) => string.Join(
        '\n',
        [
            .. view.Entries.Select(e => $"{e.Entry.Id} {e.Fate} {string.Join(',', e.By)} {e.Payload?.Length}"),
            .. view.Live<Word>().Select(w => $"{w.Id} {w.Value.Text}"),
            .. view.Live<Undoing>().Select(w => w.Id.Hex),
            .. view.Concurrent.Select(c => c.ToString()),
        ]);

    public static IDossierView FoldOf(IEnumerable<StoredEntry> entries)
    {
        var fold = new Fold("tag", WordKind.Kinds);
        fold.Apply(entries);
        return fold.View;
    }

    private static void Play(List<MemoryEntryStore> stores, Step step)
    {
        var store = stores[step.Who];
        var seen = Entries(store);
        if (seen.Count == 0 || step.What < 3)
        {
            store.Append([WordKind.Of("w" + step.Which)]);
            return;
        }

        var target = seen[step.Which % seen.Count].Id;
        var other = seen[step.Other % seen.Count].Id;
        if (step.What is 3 or 4) store.Append([WordKind.Undo(target)]);
        else if (step.What is 5 or 6) store.Append([WordKind.Of("better" + step.Other), WordKind.Supersede(target, 0)]);
        else if (step.What is 7 or 8) store.Append([WordKind.Supersede(target, other)]);
        else if (step.What == 9) store.Append([WordKind.Erase(target)]);
        else store.Merge(Entries(stores[step.Other % 3]), ErasureRule.Follow);
    }
}
