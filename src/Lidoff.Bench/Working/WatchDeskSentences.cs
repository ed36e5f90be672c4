using System.Globalization;

namespace Lidoff.Bench.Working;

/// <summary>The sentences about a watch as a whole; those about single files stand in the evidence room.</summary>
public static class WatchDeskSentences
{
    /// <summary>Never started.</summary>
    public const string None = "No folder is watched.";

    /// <summary>Stopped by the user.</summary>
    public const string Stopped = "The folder is not watched any more. What was taken in stays.";

    /// <summary>The folder is away.</summary>
    public const string Away = "The folder cannot be read now; it is looked for again every second.";

    /// <summary>At work.</summary>
    public static string Watching(int taken, int waiting) => string.Create(
        CultureInfo.InvariantCulture,
        $"Watching: {(taken == 1 ? "1 file" : $"{taken} files")} taken in{(waiting > 0 ? $", {waiting} still being written" : "")}.");

    /// <summary>Something broke that nobody foresaw.</summary>
    public static string Broke(string why) => "The watch came to an end by a fault of Lidoff itself: " + why + " What was taken in stays; start it again.";
}
