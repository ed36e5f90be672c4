using Lidoff.Evidence.Folding;

namespace Lidoff.Weighing.Becauses;

/// <summary>What a because says beside values and entries.</summary>
public static class BecauseSentences
{
    /// <summary>A file without a name of its own.</summary>
    public const string UnnamedFile = "a stored file";

    /// <summary>An entry that is not here.</summary>
    public const string NoEntry = "This dossier has no such entry.";

    /// <summary>The 90 % interval.</summary>
    public static string Interval(string interval) => $"In nine cases of ten it lies in {interval}.";

    /// <summary>Where a formula is from.</summary>
    public static string Formula(string source) => $"Formula: {source}";

    /// <summary>A spot nobody spoke of.</summary>
    public static string Nothing(string spot) => $"Nothing was noted about {spot} yet.";

    /// <summary>What became of an entry that does not count.</summary>
    public static string Fate(EntryFate fate) => fate switch
    {
        EntryFate.Erased => "Support erased: its content was removed by right.",
        EntryFate.Superseded => "A better one took its place.",
        EntryFate.Undone => "It was taken back.",
        EntryFate.Unknown => "This program does not know its kind; it is kept as it is.",
        EntryFate.Refused => "It could not be read; it is kept as it is.",
        _ => "",
    };
}
