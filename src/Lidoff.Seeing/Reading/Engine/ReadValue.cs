using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Typed.Codes;

namespace Lidoff.Seeing.Reading.Engine;

/// <summary>What a short mark says where it is a value code of a passive part: 4K7, 104, 2A474J, or 100 above 16V.</summary>
public static class ReadValue
{
    // Longer ones are numbers of parts.
    private const int LongestCode = 12;

    // Whole readings of each of two lines that are put together.
    private const int MostOfEach = 5;

    /// <summary>Its readings with odds, of everything that the lines may read; null where the mark is likelier no value code.</summary>
    public static CodeOdds? Of(ReadMark mark)
    {
        List<(string Text, double P)> texts = Guard.NotNull(mark).Lines.Count switch
        {
            1 => [.. mark.Lines[0].Reading.Readings.Select(each => (each.Text, each.P))],
            2 => [.. mark.Lines[0].Reading.Readings.Take(MostOfEach).SelectMany(upper => mark.Lines[1].Reading.Readings.Take(MostOfEach).Where(lower => lower.Text.EndsWith('V')).Select(lower => ($"{upper.Text} {lower.Text}", upper.P * lower.P)))],
            _ => [],
        };
        var odds = CodeOdds.OfRead(texts.Where(each => each.Text.Length is > 0 and <= LongestCode));
        return odds.NoneP < 0.5 ? odds : null;
    }
}
