using Lidoff.Evidence.Grading;

namespace Lidoff.Bench.Rooms.Name.Listing;

/// <summary>A spot in the list of parts.</summary>
/// <param name="Spot">Letter and number.</param>
/// <param name="Role">What it is there for; may be empty.</param>
/// <param name="Crop">Where it is seen; null where nobody pointed at it.</param>
/// <param name="Mark">The mark that counts, lines with '/' between; may be empty.</param>
/// <param name="Elsewhere">What another specimen reads there, as "B reads 343B"; may be empty.</param>
/// <param name="Settled">How far it is settled.</param>
/// <param name="Says">The verdict: a part, "family …", "not in any list"; empty where nothing was asked.</param>
/// <param name="Best">The likeliest part; empty where there is none.</param>
/// <param name="Maker">Its maker; may be empty.</param>
/// <param name="P">Probability of the verdict; of the likeliest part while undecided.</param>
/// <param name="Grade">How well it is known.</param>
/// <param name="Date">The weeks its mark may stand for; may be empty.</param>
/// <param name="NoDate">Why it stands for none.</param>
/// <param name="Decided">True when a person settled something about it.</param>
public sealed record SpotRow(
    string Spot, string Role, SpotCrop? Crop, string Mark, string Elsewhere, Settled Settled, string Says, string Best, string Maker, double P, Grade Grade, string Date, string NoDate, bool Decided)
{
    /// <summary>True when every word of a filter stands somewhere in the row.</summary>
    public bool Fits(string filter) => filter.Split(' ', StringSplitOptions.RemoveEmptyEntries).All(word =>
        Spot.Contains(word, StringComparison.OrdinalIgnoreCase) || Role.Contains(word, StringComparison.OrdinalIgnoreCase) || Mark.Contains(word, StringComparison.OrdinalIgnoreCase)
        || Says.Contains(word, StringComparison.OrdinalIgnoreCase) || Best.Contains(word, StringComparison.OrdinalIgnoreCase) || Maker.Contains(word, StringComparison.OrdinalIgnoreCase));
}
