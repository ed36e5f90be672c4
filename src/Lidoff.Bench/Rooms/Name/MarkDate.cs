using Lidoff.Bench.Showing;
using Lidoff.Naming.Dates;
using Lidoff.Seeing.Kinds;

namespace Lidoff.Bench.Rooms.Name;

/// <summary>What a mark's date line may stand for.</summary>
public static class MarkDate
{
    /// <summary>
    /// The likeliest reading of the first line below the part's own that is four digits, as "2119: 2021-W19 (0.62)"; empty where there is
    /// none. Longer lines hold plants and lots too; those are for the command <c>date</c>.
    /// </summary>
    public static string Of(MarkSighting? mark)
    {
        var line = mark?.Lines.Skip(1).Select(each => each.Text.Trim()).FirstOrDefault(text => text.Length == 4 && text.All(char.IsAsciiDigit));
        if (line is null || DateCodes.ReadOne(line, null).Readings is not { Count: > 0 } readings) return "";
        var weeks = readings[0].Weeks;
        return $"{line}: {(weeks.From == weeks.To ? weeks.From.ToString() : weeks.From + " to " + weeks.To)} ({Odds.P(readings[0].P)})";
    }
}
