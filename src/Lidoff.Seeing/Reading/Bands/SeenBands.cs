using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Typed.Codes.Bands;
using Lidoff.Seeing.Reading.Finding;

namespace Lidoff.Seeing.Reading.Bands;

/// <summary>Colour bands found on an axial part in a picture.</summary>
/// <param name="Body">The body, its width along its axis, px.</param>
/// <param name="Bands">The bands from one end of it to the other: where each lies, px, and how likely each colour is; by the body's colour and the light alone.</param>
/// <param name="FirstToLast">How many times likelier than at the last the code begins at the first, by the gaps between them.</param>
/// <param name="Odds">Every reading of them.</param>
public sealed record SeenBands(PictureRegion Body, ValueList<(PictureRegion Outline, BandShares Colours)> Bands, double FirstToLast, BandOdds Odds);
