using Lidoff.Bench.Data;
using Lidoff.Bench.Hosting;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Bench.Working;

/// <summary>
/// The hand of one window: notes what a person does, remembers it so that it can be taken back, and says what came of it. Refusals
/// come back as sentences; what was typed is the page's to keep. Every method returns once the outcome stands in the store.
/// </summary>
public sealed class Hand
{
    private readonly IBenchData data;
    private readonly Acts acts;
    private readonly HeadsWatch watch;

    internal Hand(IBenchData data, Acts acts, HeadsWatch watch)
    {
        this.data = data;
        this.acts = acts;
        this.watch = watch;
    }

    /// <summary>Called when <see cref="Said"/> changes, on the caller's thread.</summary>
    public event Action? Spoke;

    /// <summary>What came of the last act, one sentence; empty at first.</summary>
    public string Said { get; private set; } = "";

    /// <summary>True when <see cref="Said"/> tells of a refusal.</summary>
    public bool Refused { get; private set; }

    /// <summary>
    /// Stores lines, all or none. <paramref name="says"/> is what was done in a few words, as the undo list shows it ("spot U3").
    /// A failed outcome carries every fault of every line.
    /// </summary>
    public Task<Outcome<IReadOnlyList<StoredEntry>>> Note(string dossier, string says, params IReadOnlyList<Line> lines)
    {
        Guard.That(lines.Count > 0, "at least one line");
        return acts.InTurn(dossier, () => Store(dossier, says, lines));
    }

    /// <summary>Begins a dossier.</summary>
    public async Task<Outcome<IReadOnlyList<StoredEntry>>> Begin(string dossier, string title)
    {
        var begun = await Task.Run(() => data.Begin(dossier, title));
        if (begun.Ok) Say(HandSentences.Begun(dossier));
        else Say(begun.Faults[0].Say, refused: true);
        watch.Poke();
        return begun;
    }

    /// <summary>Takes back the last thing done in a dossier since the workbench started, whichever window did it.</summary>
    public Task Undo(string dossier) => acts.InTurn(dossier, () => acts.Last(dossier) is { } act
        ? TakeBack(dossier, act, HandSentences.TakenBack(act.Says), by => acts.TookBack(dossier, act, by))
        : Silent(HandSentences.NothingToTakeBack));

    /// <summary>Brings again what was last taken back.</summary>
    public Task Redo(string dossier) => acts.InTurn(dossier, () => acts.Next(dossier) is { } act
        ? TakeBack(dossier, act, HandSentences.BroughtAgain(act.Says), by => acts.BroughtAgain(dossier, act, by))
        : Silent(HandSentences.NothingToBringAgain));

    /// <summary>Takes back any entry of the dossier, however old.</summary>
    public Task<Outcome<IReadOnlyList<StoredEntry>>> TakeBack(string dossier, EntryId entry, string says) =>
        Note(dossier, HandSentences.TakingBack(says), Line.Of("undo").Set("target", entry.Hex));

    /// <summary>Says a sentence in this window's status line.</summary>
    public void Say(string sentence, bool refused = false)
    {
        (Said, Refused) = (sentence, refused);
        Spoke?.Invoke();
    }

    private async Task<Outcome<IReadOnlyList<StoredEntry>>> Store(string dossier, string says, IReadOnlyList<Line> lines)
    {
        var stored = await Task.Run(() => data.Note(dossier, Line.Written(lines)));
        if (stored.TryValue(out var entries))
        {
            // Erasing is for good: it is not offered as something to take back.
            if (entries.All(entry => entry.Entry.Kind != "erase")) acts.Did(dossier, says, entries.Select(entry => entry.Id));
            Say(HandSentences.Stored(says));
        }
        else
        {
            Say(HandSentences.NotStored(says, stored.Faults), refused: true);
        }

        watch.Poke();
        return stored;
    }

    private async Task<bool> TakeBack(string dossier, Act act, string says, Action<IEnumerable<EntryId>> then)
    {
        var lines = act.Entries.Reverse().Select(id => Line.Of("undo").Set("target", id.Hex)).ToList();
        var stored = await Task.Run(() => data.Note(dossier, Line.Written(lines)));
        if (stored.TryValue(out var entries))
        {
            // In the order of the undos, so that bringing again goes the other way round.
            then(entries.Select(entry => entry.Id));
            Say(says);
        }
        else
        {
            Say(HandSentences.NotStored(says, stored.Faults), refused: true);
        }

        watch.Poke();
        return stored.Ok;
    }

    private Task<bool> Silent(string says)
    {
        Say(says);
        return Task.FromResult(false);
    }
}
