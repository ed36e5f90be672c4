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
        var line = Line(mark);
        if (line is null || DateCodes.ReadOne(line, null).Readings is not { Count: > 0 } readings) return "";
        var weeks = readings[0].Weeks;
        return $"{line}: {(weeks.From == weeks.To ? weeks.From.ToString() : weeks.From + " to " + weeks.To)} ({Odds.P(readings[0].P)})";
    }

    /// <summary>Why there is none, empty where there is one: no line below the part's own, none that is four digits, or four digits that are no date.</summary>
    public static string Why(MarkSighting? mark)
    {
        const string None = "no date code read";
        if (mark is null) return None;
        if (Of(mark).Length > 0) return "";
        if (Line(mark) is { } line) return $"{None}: {DateCodes.ReadOne(line, null).Fault?.Say ?? line}";
        var below = mark.Lines.Skip(1).Select(each => each.Text.Trim()).Where(text => text.Length > 0).Select(Shown.Briefly).ToList();
        return below.Count == 0 ? $"{None}: nothing stands below the part's own line" : $"{None}: {string.Join(", ", below)} {(below.Count == 1 ? "is" : "are")} not four digits alone, and may name plant and lot too";
    }

    private static string? Line(MarkSighting? mark) => mark?.Lines.Skip(1).Select(each => each.Text.Trim()).FirstOrDefault(text => text.Length == 4 && text.All(char.IsAsciiDigit));
}
