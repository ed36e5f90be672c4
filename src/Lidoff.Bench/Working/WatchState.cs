using Lidoff.Evidence.Entries;

namespace Lidoff.Bench.Working;

/// <summary>How the watch over a folder stands.</summary>
/// <param name="Running">True while the folder is looked at.</param>
/// <param name="Folder">The folder; hostile text; empty where none was ever watched.</param>
/// <param name="Say">The state in a sentence.</param>
/// <param name="Taken">Names of the files taken in since the start, newest first, at most <see cref="WatchDesk.MostListed"/>.</param>
/// <param name="TakenInAll">How many were taken in since the start.</param>
/// <param name="Refused">Sentences about what was refused or is broken, newest first, at most <see cref="WatchDesk.MostListed"/>.</param>
public sealed record WatchState(bool Running, string Folder, string Say, ValueList<string> Taken, int TakenInAll, ValueList<string> Refused)
{
    /// <summary>No watch was started.</summary>
    public static WatchState None { get; } = new(false, "", WatchDeskSentences.None, [], 0, []);
}
