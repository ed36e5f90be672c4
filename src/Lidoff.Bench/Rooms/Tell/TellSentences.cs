using Lidoff.Numbers.Failing;
using Lidoff.Telling.Claims;

namespace Lidoff.Bench.Rooms.Tell;

/// <summary>What the room Tell says.</summary>
public static class TellSentences
{
    /// <summary>No claim yet.</summary>
    public const string NoClaims = "No claim yet. Write a sentence below; what stands in braces is filled in live and watched.";

    /// <summary>How a claim is typed.</summary>
    public const string ClaimHint = "One sentence. References stand in braces and are filled in live: {part:U1}, {length:U1:long side}, {reckoning:R1}. Begin with a name and a colon (C2: …) to write that claim anew; otherwise the first free name is taken.";

    /// <summary>Claims with a gap in them.</summary>
    public static string StillUnfinished(int count) => count == 1 ? "One of them reads (unknown) somewhere." : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{count} of them read (unknown) somewhere.");

    /// <summary>What publishing does.</summary>
    public const string PublishHint = "Remembers what every claim says now. From then on a claim whose support moves is flagged here, with what readers were told.";

    /// <summary>What leaves the machine.</summary>
    public const string OutHint = "Pictures go out as upright copies without place, camera serial or owner's name.";

    /// <summary>An empty claim.</summary>
    public static Fault Empty { get; } = new("text", "a sentence", "Write a sentence first.");

    /// <summary>No form was chosen.</summary>
    public static Fault NoForm { get; } = new("as", "html, md or json", "Choose at least one form of the report.");

    /// <summary>Readers were told nothing yet that could have moved.</summary>
    public static bool Unfinished(ClaimState state, bool published) => state == ClaimState.Lost && !published;

    /// <summary>The word for a state; "new" before anything was published of it.</summary>
    public static string Word(ClaimState state, bool published) => state switch
    {
        ClaimState.Lost when !published => "unfinished",
        ClaimState.Same => published ? "same" : "new",
        ClaimState.ProgramChanged => "program changed",
        _ => state.ToString().ToLowerInvariant(),
    };

    /// <summary>What a state means for a reader.</summary>
    public static string Means(ClaimState state, bool published) => state switch
    {
        ClaimState.Lost when !published => "something it leans on has not been measured yet",
        ClaimState.Moved => "a number moved, within what readers were told",
        ClaimState.Outside => "a number left the interval readers were told",
        ClaimState.Flipped => "a name or a verdict changed",
        ClaimState.Lost => "something it leans on is gone",
        ClaimState.ProgramChanged => "what it leans on did not change, the program did",
        _ => "",
    };

    /// <summary>A report that is ready.</summary>
    public static string Made(int pictures, string size) => $"Ready: {Showing.Count.Of(pictures, "picture")}, {size}.";
}
