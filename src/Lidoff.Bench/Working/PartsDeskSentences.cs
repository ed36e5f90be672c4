using Lidoff.Bench.Showing;

namespace Lidoff.Bench.Working;

/// <summary>What is said while the parts of a board are looked for.</summary>
internal static class PartsDeskSentences
{
    public const string Opening = "Opening the picture";

    public const string Looking = "Looking for text and reading it";

    public static string JobName(string picture) => $"finding parts in {Shown.Briefly(picture)}";
}
