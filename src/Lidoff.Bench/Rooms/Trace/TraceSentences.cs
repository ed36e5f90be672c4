using System.Globalization;
using Lidoff.Bench.Showing;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing;
using Lidoff.Seeing.Boards;
using Lidoff.Tracing.Kinds;

namespace Lidoff.Bench.Rooms.Trace;

/// <summary>What the room Trace says of what was typed.</summary>
public static class TraceSentences
{
    /// <summary>Under the field of touches.</summary>
    public const string TouchHint = "Two points and a reading: beep, no beep, open, 2k2, 0.3 Ω, 1.8 V. One point keeps the second of the pair (for volts: GND), a reading alone keeps both.";

    /// <summary>Under the field of nets.</summary>
    public const string NetHint = "Name: its points, because … A net drawn by hand stands whatever the touches say so far.";

    /// <summary>Under the field of rails.</summary>
    public const string RailHint = "Name, then what is known: 3.7 V ± 0.02, from the spot that makes it, to those it feeds, net its net, because …";

    /// <summary>Beside the field of touches.</summary>
    public const string Gate = "Ohms and beeps only with the cell out and capacitors discharged; a voltage left over makes a reading of ohms worthless.";

    /// <summary>Under the field of pads.</summary>
    public static string PadHint { get; } = "Point, then its name, its role, top or bottom. Then click where it lies in a picture, or press Note. Roles: " + string.Join(", ", PadRoles.Words) + ".";

    /// <summary>Under a book whose pages lie on no common board.</summary>
    public const string NotLaid = "Shown as they were taken. Point at two to four landmarks by the same names in both, under See, and they lie on one board: level with each other, and see-through.";

    /// <summary>By what two pictures lie on one board, and how well.</summary>
    public static string Laid(LaidBoard board, LaidPicture first, LaidPicture second)
    {
        var shared = first.Rests.Where(rest => rest.Used && second.Rests.Any(other => other.Name == rest.Name && other.Used)).ToList();
        var rests = shared.Concat(second.Rests.Where(rest => shared.Any(each => each.Name == rest.Name))).ToList();
        var by = shared.Count > 0 ? "by " + string.Join(", ", shared.Select(rest => Shown.Of(rest.Name))) : "over other pictures";
        if (rests.Count == 0) return $"Both lie on one board {by}.";
        var within = board.ScaleKnown && rests.TrueForAll(rest => rest.Um is not null)
            ? string.Create(CultureInfo.InvariantCulture, $"{rests.Max(rest => rest.Um!.Value):0} µm")
            : string.Create(CultureInfo.InvariantCulture, $"{rests.Max(rest => rest.Px):0.0} px");
        return $"Both lie on one board {by}, within {within} at each.";
    }

    /// <summary>Nothing typed.</summary>
    public static Fault NoTouch { get; } = new("touch", "two points and a reading", "Type two points and what the meter showed: U3.13 GND beep.");

    /// <summary>A probe on a part as a whole: as one point it would join the nets of all its pins.</summary>
    public static Fault WhichPin(string spot) => new("touch", "a pin of the part", $"{SeeingSentences.Quoted(spot)} has several pins; as one point it would join their nets. Say which was touched: {Shown.Of(spot)}.1.");

    /// <summary>Nothing pasted.</summary>
    public static Fault NothingPasted { get; } = new("paste", "a line for each touch", "There is no touch in what was pasted; a line is two points and a reading: U3.13;GND;0.3.");

    /// <summary>A pasted line with too little.</summary>
    public static Fault TwoPointsAndReading { get; } = new("touch", "two points and a reading", "a line is two points and a reading: U3.13;GND;0.3.");

    /// <summary>A net without a name.</summary>
    public static Fault NoNet { get; } = new("net", "a name, then points", "Type the net's name and its points: VSYS: U3.5 C4.1.");

    /// <summary>A rail without a name.</summary>
    public static Fault NoRail { get; } = new("rail", "a name", "Type the rail's name first: VSYS 3.7 V from U4 to U1 U2.");

    /// <summary>A pad without a point.</summary>
    public static Fault NoPad { get; } = new("pad", "a point", "Type the pad first: U3.13 VDD, or TP5.");

    /// <summary>No pair to keep.</summary>
    public static Fault NoPair(int points) => new("touch", "two points", points == 1 ? "Only one point is there, and no pair before it whose second point could stay: type both." : "Which points? There is no pair before this reading that could stay: type both.");

    /// <summary>Points without a reading.</summary>
    public static Fault NoReading(IReadOnlyList<string> words) => new("touch", "a reading behind the points", $"What did the meter show for {Shown.Briefly(string.Join(" – ", words))}? Add beep, no beep, open, ohms or volts.");

    /// <summary>A rail's name where a reading should be.</summary>
    public static Fault RailOrReading(string text) => new("touch", "a point, or a voltage as 3.3 V", $"Is {Shown.Quoted(text)} a rail's name or a voltage? Write a voltage as {Shown.Briefly(text.Replace('V', '.').TrimEnd('.'))} V; behind a rail's name the reading is missing.");

    /// <summary>A bare number that is asked about.</summary>
    public static Fault OhmsOrVolts(string text) => new("reading", "Ω or V behind the number", $"Is {Shown.Quoted(text)} ohms or volts? Write the unit, or choose what a bare number means.");

    /// <summary>A reading in another unit.</summary>
    public static Fault NeitherOhmsNorVolts(string text) => new("reading", "ohms or volts", $"{Shown.Quoted(text)} is neither ohms nor volts.");

    /// <summary>A reading as a range.</summary>
    public static Fault ReadingIsNoRange(string text) => new("reading", "a value, with ± where it is in doubt", $"{Shown.Quoted(text)} is a range; a meter shows one value: write 3.3 V ± 0.1.");

    /// <summary>A net without points.</summary>
    public static Fault NoPoints(string net) => new("points", "at least one point", $"Which points are on {Shown.Briefly(net)}? Type them behind its name: {Shown.Briefly(net)}: U3.5 C4.1.");

    /// <summary>Not exactly one name behind a word.</summary>
    public static Fault OneBehind(string word) => new(word, "one name", $"Behind {Shown.Quoted(word)} stands one name.");

    /// <summary>Commas as separators and perhaps as decimal marks.</summary>
    public static Fault CommasTwice(int line, string text) => new(
        Line(line), "cells parted by semicolons or tabs", $"Line {Number(line)}: do the commas in {Shown.Quoted(text)} part the cells, or is one of them a decimal comma? Part the cells by semicolons or tabs.");

    /// <summary>Too large a paste.</summary>
    public static Fault TooManyLines(int lines, int most) => new("paste", $"at most {Number(most)} lines", $"{Number(lines)} lines are too many for one paste; at most {Number(most)} are read at once.");

    /// <summary>A fault with its line in front.</summary>
    public static Fault OnLine(int line, Fault fault) => fault with { Where = Line(line), Say = $"Line {Number(line)}: {fault.Say}" };

    private static string Line(int line) => "line " + Number(line);

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
