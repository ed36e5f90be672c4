using Lidoff.Seeing.Composing;

namespace Lidoff.Bench.Rooms.See.Composing;

/// <summary>What the panel of pictures of pictures says.</summary>
internal static class ComposeSentences
{
    /// <summary>The methods, each with its title and what it takes.</summary>
    public static IReadOnlyList<(ComposeMethod Method, string Title, string Takes)> Methods { get; } =
    [
        (ComposeMethod.Stack, "Focus stack", "Slices of one place, the focus moved a little from one to the next, camera and board clamped. Gives one sharp picture and the height of each place."),
        (ComposeMethod.Stitch, "Stitch", "Pieces of one flat board at one zoom, neighbours sharing a quarter of their width. Rows that close a loop check one another."),
        (ComposeMethod.Lights, "Light set", "One place from a clamped camera, a low lamp from another side in each, three sides at least. Gives marks at their best and a relief."),
        (ComposeMethod.Average, "Average", "The same picture many times. Four times as many frames halve the noise; frames that moved stay out."),
    ];

    /// <summary>Above the chosen ones.</summary>
    public const string InOrder = "In this order. Slices from the nearest focus to the farthest or back; of tiles and lights the first gives place and scale.";

    /// <summary>Nothing chosen.</summary>
    public const string NothingChosen = "Nothing chosen yet.";

    /// <summary>Fewer pictures than it takes.</summary>
    public const string NeedMore = "Bring the pictures into the dossier first; two at least.";

    /// <summary>Under the step.</summary>
    public const string StepHint = "mm, below zero where the focus moved away from the camera; empty where you do not know: heights then come out in slices.";

    /// <summary>A step of nothing.</summary>
    public const string StepZero = "A step of zero moves nothing; leave it empty where it is not known.";

    /// <summary>Beside the way to take it back.</summary>
    public const string TakeBackHint = "Taken back, the picture is gone from the dossier's lists; its file stays in the workspace and can be brought again.";

    /// <summary>A result.</summary>
    public const string Stored = "Made and stored.";
}
