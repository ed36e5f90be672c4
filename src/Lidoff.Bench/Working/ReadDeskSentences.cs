using Lidoff.Bench.Showing;
using Lidoff.Numbers.Failing;

namespace Lidoff.Bench.Working;

/// <summary>What is said while marks are read by the machine.</summary>
internal static class ReadDeskSentences
{
    public const string All = "reading all marks";

    public const string Opening = "Opening the networks";

    public static string JobName(string spot) => spot.Length > 0 ? $"reading the mark on {Shown.Briefly(spot)}" : All;

    public static string Looking(string spot, string specimen) => specimen.Length > 0 ? $"{Shown.Briefly(spot)} of specimen {Shown.Briefly(specimen)}" : Shown.Briefly(spot);

    public static string Done(string spot, int marks) => spot.Length > 0 ? $"machine reading of {Shown.Briefly(spot)}" : Count.Of(marks, "machine reading");

    public static Fault Unseen(string spot) => new(spot, "a spot that was pointed at in a picture", $"No picture shows {Shown.Briefly(spot)} yet: point at it in one (room See, P), or outline its body there (B).");

    public static string Same(string spot) => $"{Shown.Briefly(spot)} reads as it did: the same networks looked at the same places. Nothing was stored anew.";

    public static string Closing(string spot) => $"{JobName(spot)}: the workbench is closing.";
}
