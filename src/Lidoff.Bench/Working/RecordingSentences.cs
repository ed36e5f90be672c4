using Lidoff.Bench.Showing;
using Lidoff.Numbers.Failing;

namespace Lidoff.Bench.Working;

/// <summary>What a person reads about recordings.</summary>
public static class RecordingSentences
{
    /// <summary>Nobody gave the bench a place for recordings.</summary>
    public static Fault NoPlace { get; } = new("recording", "a workbench with a workspace", "This workbench has no place to keep a recording.");

    /// <summary>It was ended: by hand in another window, or because nothing came any more.</summary>
    public static Fault Over { get; } = new("recording", "a recording that is under way", "This recording is over; what came until then is kept. Start another one.");

    /// <summary>Nothing came at all.</summary>
    public static Fault Empty { get; } = new("recording", "at least a second of video", "Nothing was recorded; nothing is kept of it.");

    /// <summary>A piece was lost on the way.</summary>
    public static Fault Gap(long have, long at) => new("at", $"{have} bytes", $"A piece of the recording is missing: {Sizes.Bytes(have)} are here and the next piece begins after {Sizes.Bytes(at)}. What came until then is kept.");

    /// <summary>Over its cap.</summary>
    public static Fault TooLong(long most) => new("recording", $"at most {most} bytes", $"The recording has reached the {Sizes.Bytes(most)} that one may have and was ended; all of it is kept. Start another one to go on.");

    /// <summary>Too many at once.</summary>
    public static Fault TooMany(int most) => new("recording", $"at most {most} at once", $"No more than {most} recordings can run at once; end one.");
}
