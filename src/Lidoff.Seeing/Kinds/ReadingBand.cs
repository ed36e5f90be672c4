using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Typed.Codes.Bands;

namespace Lidoff.Seeing.Kinds;

/// <summary>One colour band as a machine saw it.</summary>
/// <param name="Top">What it may be, likeliest first, together one at most.</param>
public sealed record ReadingBand(ValueList<(BandColour Colour, double P)> Top)
{
    /// <summary>The same as odds take it.</summary>
    public BandShares Shares => new([.. BandTable.All.Select(colour => Top.Where(each => each.Colour == colour).Sum(each => each.P))]);
}
