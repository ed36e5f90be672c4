using Lidoff.Bench.Showing;

namespace Lidoff.Bench.Components.Parts.Reading;

/// <summary>What is said of a machine's reading.</summary>
internal static class ReadingWords
{
    public const string Nobody = "Nobody has had it read by the machine yet. It looks for the body where the spot was pointed at, or within its outline, in every picture that shows it.";

    public const string Counts = "It names the spot as long as no person reads the mark.";

    public const string Beside = "A person's reading counts; this one stands beside it.";

    public const string NoText = "no text; kept as it looks";

    public static string Emblem(int number, int of) => of == 1 ? "A mark on it that is no text" : $"Mark {number} on it that is no text";

    public const string Nothing = "Nothing was read.";

    public const string Take = "Take over what is chosen, as your own reading";

    public const string TakeBands = "Take over the likeliest colours, as your own reading";

    public const string Correct = "Put it into the line of the mark, to be corrected place by place";

    public const string Outline = "Outline its body by three corners in the picture that shows it";

    public const string Draw = "Draw a box around its body or its mark in the picture that shows it";

    public const string WholeLine = "Whole line";

    public static string AsOne(int pictures) => $"{Count.Of(pictures, "picture")} of it read as one";

    public static string Taken(string spot) => $"mark on {Shown.Briefly(spot)}, taken over from the machine";

    public static string TakenBack(string spot) => $"machine reading of {Shown.Briefly(spot)}";

    /// <summary>With what a mark was read that was taken over: an eye that looked at what the machine proposed.</summary>
    public const string Instrument = "eye, on the machine's reading";
}
