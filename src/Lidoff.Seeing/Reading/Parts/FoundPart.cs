using Lidoff.Seeing.Reading.Engine;
using Lidoff.Seeing.Reading.Finding;

namespace Lidoff.Seeing.Reading.Parts;

/// <summary>Text that a machine found and read in a picture of a board: a proposal, of which only a person makes a spot.</summary>
/// <param name="Region">What was read: the body, or what is around the text.</param>
/// <param name="HasBody">Whether a body was found around it; without one it may be a small part's mark or a print of the board.</param>
/// <param name="Read">What was read.</param>
public sealed record FoundPart(PictureRegion Region, bool HasBody, ReadMark Read)
{
    /// <summary>How many characters are likely right, added up.</summary>
    public double Worth => Read.Lines.Sum(line => line.Reading.Places.Where(place => !place.Extra && place.Character.Length > 0 && place.Character != "?").Sum(place => place.Top[0].P));
}
