using Lidoff.Numbers.Failing;

namespace Lidoff.Bench.Working;

/// <summary>What the status line says of what was done.</summary>
internal static class HandSentences
{
    public const string NothingToTakeBack = "Nothing was done since the workbench started that could be taken back here. Older entries are taken back one by one, in the overview's list of entries.";

    public const string NothingToBringAgain = "Nothing was taken back that could be brought again.";

    public static string Stored(string says) => "Stored: " + says + ".";

    public static string Begun(string dossier) => "Begun: dossier " + dossier + ".";

    public static string TakenBack(string says) => "Taken back: " + says + ".";

    public static string TakingBack(string says) => "took back " + says;

    public static string BroughtAgain(string says) => "Brought again: " + says + ".";

    public static string NotStored(string says, IReadOnlyList<Fault> faults) => "Not stored (" + says + "): " + string.Join(' ', faults.Select(fault => fault.Say).Distinct(StringComparer.Ordinal));
}
