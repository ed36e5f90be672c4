using System.Globalization;
using Lidoff.Bench.Showing;

namespace Lidoff.Bench.Rooms.See.Laying;

/// <summary>What the page says on which a picture is laid on another.</summary>
internal static class LaySentences
{
    /// <summary>What this is.</summary>
    public const string Lead = "Holes, vias and lands are looked for in both pictures, and how they lie on one another is found out, whichever side either shows. What comes of it is a proposal: nothing lies on a board until you take it over.";

    /// <summary>No other picture.</summary>
    public const string NoOther = "There is no other picture yet. Bring one of the other side, or another one of this side.";

    /// <summary>Above the proposal.</summary>
    public const string Look = "Look at both: each square should sit on the same hole. Take away what does not, then take the rest over.";

    /// <summary>Too few left.</summary>
    public const string TooFew = "Four are needed to tell how a picture leans.";

    /// <summary>All taken over.</summary>
    public const string AllTaken = "All of these are landmarks now.";

    /// <summary>How well they agree.</summary>
    public static string Summary(int agree, int of, double byChance, double logOdds, bool mirrored, string rest) => string.Create(
        CultureInfo.InvariantCulture,
        $"{agree} of {of} holes agree, {(mirrored ? "from the other side" : "from the same side")}; {rest} are left on average. By accident {(byChance < 0.05 ? "hardly one" : byChance.ToString("0.#", CultureInfo.InvariantCulture))} would{(logOdds < -6 ? ", and a match as good as this not once in a million pairs" : "")}.");

    /// <summary>Taking over, as the list of acts shows it.</summary>
    public static string TakenOver(int landmarks, string other) => $"{Count.Of(landmarks, "landmark", "landmarks")} found with {Shown.Briefly(other)}";

    /// <summary>Leaving it, as the list of acts shows it.</summary>
    public static string Left(string other) => "match with " + Shown.Briefly(other);
}
