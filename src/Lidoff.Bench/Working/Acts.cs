using Lidoff.Evidence.Entries;

namespace Lidoff.Bench.Working;

/// <summary>
/// What was done in each dossier since the workbench started, whichever window did it, so that the last thing can be taken back and
/// brought again. Taking back is an entry like any other: nothing leaves the journal. Safe from any thread.
/// </summary>
public sealed class Acts
{
    private readonly Lock gate = new();
    private readonly Dictionary<string, (Stack<Act> Done, Stack<Act> Undone)> dossiers = new(StringComparer.Ordinal);
    private readonly Dictionary<string, SemaphoreSlim> turns = new(StringComparer.Ordinal);

    /// <summary>Called on any thread when <see cref="Last"/> or <see cref="Next"/> of some dossier changed.</summary>
    public event Action? Moved;

    /// <summary>Notes that something was done; what had been taken back before can no longer be brought again.</summary>
    public void Did(string dossier, string says, IEnumerable<EntryId> entries)
    {
        lock (gate)
        {
            var (done, undone) = Of(dossier);
            done.Push(new(says, [.. entries]));
            undone.Clear();
        }

        Moved?.Invoke();
    }

    /// <summary>What <see cref="Hand.Undo"/> would take back; null when nothing.</summary>
    public Act? Last(string dossier)
    {
        lock (gate) return Of(dossier).Done.TryPeek(out var act) ? act : null;
    }

    /// <summary>What <see cref="Hand.Redo"/> would bring again; its entries are the undo entries to undo. Null when nothing.</summary>
    public Act? Next(string dossier)
    {
        lock (gate) return Of(dossier).Undone.TryPeek(out var act) ? act : null;
    }

    /// <summary>Runs an act of a dossier when those begun before it have ended, in whichever window: a key that follows another at once means what came of the first.</summary>
    internal async Task<T> InTurn<T>(string dossier, Func<Task<T>> act)
    {
        SemaphoreSlim? turn;
        lock (gate)
        {
            if (!turns.TryGetValue(dossier, out turn)) turns[dossier] = turn = new(1);
        }

        await turn.WaitAsync();
        try
        {
            return await act();
        }
        finally
        {
            turn.Release();
        }
    }

    /// <summary>An act was taken back by <paramref name="by"/>; false when another window was faster.</summary>
    internal void TookBack(string dossier, Act act, IEnumerable<EntryId> by)
    {
        lock (gate)
        {
            var (done, undone) = Of(dossier);
            if (done.TryPeek(out var last) && last == act) done.Pop();
            undone.Push(new(act.Says, [.. by]));
        }

        Moved?.Invoke();
    }

    /// <summary>An act that had been taken back was brought again by <paramref name="by"/>, entries that can be undone in their turn.</summary>
    internal void BroughtAgain(string dossier, Act act, IEnumerable<EntryId> by)
    {
        lock (gate)
        {
            var (done, undone) = Of(dossier);
            if (undone.TryPeek(out var next) && next == act) undone.Pop();
            // Undoing the undo of the undo takes it back once more: the chain of undos may be as long as it likes.
            done.Push(new(act.Says, [.. by]));
        }

        Moved?.Invoke();
    }

    private (Stack<Act> Done, Stack<Act> Undone) Of(string dossier) =>
        dossiers.TryGetValue(dossier, out var stacks) ? stacks : dossiers[dossier] = (new(), new());
}
