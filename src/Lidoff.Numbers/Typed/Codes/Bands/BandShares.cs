namespace Lidoff.Numbers.Typed.Codes.Bands;

/// <summary>
/// One band as it was seen: how likely each colour is to look like that, in the order of <see cref="BandColour"/>, of any sum. A colour that a person
/// names stands alone.
/// </summary>
public sealed record BandShares(IReadOnlyList<double> OfColours)
{
    /// <summary>One of several colours, as likely each.</summary>
    public static BandShares Of(params IReadOnlyList<BandColour> colours) => new([.. BandTable.All.Select(colour => colours.Contains(colour) ? 1.0 : 0)]);

    /// <summary>Weight of a colour.</summary>
    public double this[BandColour colour] => OfColours[(int)colour];

    /// <summary>The likeliest colour.</summary>
    public BandColour Likeliest => BandTable.All.MaxBy(colour => this[colour]);
}
