using Lidoff.Bench.Showing;

namespace Lidoff.Bench.Working;

/// <summary>What is said while two pictures are laid on one another by a machine.</summary>
internal static class LayDeskSentences
{
    public static string JobName(string first, string second) => $"laying {Shown.Briefly(second)} on {Shown.Briefly(first)}";

    public static string Done(string first, string second) => $"match of {Shown.Briefly(first)} and {Shown.Briefly(second)}";

    public static string Looking(string name) => $"Looking for holes in {Shown.Quoted(name)}";

    public const string Matching = "Trying how they lie on one another";

    public static string Gone(string name) => $"{Shown.Quoted(name)} is no longer stored: it was erased.";

    public static string AllNamed(string first, string second) => $"The holes that {Shown.Quoted(first)} and {Shown.Quoted(second)} share are landmarks already, or under other names: there is nothing to take over.";
}
