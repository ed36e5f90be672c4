using Lidoff.Bench.Working;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
using Microsoft.AspNetCore.Components;

namespace Lidoff.Bench.Rooms;

/// <summary>A part of a room's page: what it is shown, and how it stores.</summary>
public abstract class RoomPanel<TView> : ComponentBase
    where TView : class
{
    /// <summary>The dossier's short name.</summary>
    [Parameter, EditorRequired]
    public string Name { get; set; } = "";

    /// <summary>The room as it stands.</summary>
    [Parameter, EditorRequired]
    public TView View { get; set; } = null!;

    /// <summary>Notes what is done here.</summary>
    [Inject]
    protected Hand Hand { get; private set; } = null!;

    /// <summary>Stores lines; hands back what is wrong with them, or nothing.</summary>
    protected async Task<IReadOnlyList<Fault>> Note(string says, params IReadOnlyList<Line> lines) => (await Hand.Note(Name, says, lines)).Faults;

    /// <summary>Stores what a typed line came to, or hands back its faults.</summary>
    protected Task<IReadOnlyList<Fault>> Note<T>(Outcome<T> typed, Func<T, string> says, Func<T, IReadOnlyList<Line>> lines) =>
        typed.TryValue(out var read) ? Note(says(read), lines(read)) : Task.FromResult(typed.Faults);

    /// <summary>Puts a line in the place of an entry.</summary>
    protected Task<IReadOnlyList<Fault>> Correct(string says, EntryId entry, Line line) => Note(says, Line.InPlaceOf(entry.Hex, line));

    /// <summary>Takes an entry back.</summary>
    protected Task TakeBack(EntryId entry, string says) => Hand.TakeBack(Name, entry, says);
}
