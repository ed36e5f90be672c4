using Lidoff.Bench.Showing;
using Lidoff.Seeing.Composing;

namespace Lidoff.Bench.Working;

/// <summary>What is said of pictures made of pictures while they are made and stored.</summary>
internal static class ComposeDeskSentences
{
    public static string JobName(ComposeMethod method, int pictures) => method switch
    {
        ComposeMethod.Stack => $"focus stack of {Count.Of(pictures, "slice")}",
        ComposeMethod.Stitch => $"stitching {Count.Of(pictures, "tile")}",
        ComposeMethod.Lights => $"light set of {Count.Of(pictures, "picture")}",
        _ => $"average of {Count.Of(pictures, "frame")}",
    };

    public static string Done(string word) => $"{word} of pictures";

    public static string Gone(string name) => $"{Shown.Quoted(name)} is no longer stored: it was erased.";
}
