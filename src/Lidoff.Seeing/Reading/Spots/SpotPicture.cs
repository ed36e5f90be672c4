using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Pictures;
using Lidoff.Seeing.Reading.Finding;

namespace Lidoff.Seeing.Reading.Spots;

/// <summary>
/// A picture in which a spot was pointed at or its body outlined. Of outline, box and place the first that is there says where the body is; one
/// of them is.
/// </summary>
/// <param name="Sha256">Content hash of the picture.</param>
/// <param name="Name">Its file name; hostile text.</param>
/// <param name="Path">Where its file lies.</param>
/// <param name="Header">What its file says of itself.</param>
/// <param name="Outline">The body as a person outlined it, px; null where nobody did.</param>
/// <param name="Box">A box that a person drew around it, px; null where nobody did.</param>
/// <param name="At">Where a person pointed at it, px; null where nobody did.</param>
/// <param name="Others">Where other spots were pointed at in the picture: what holds one of them too is a board and no body.</param>
public sealed record SpotPicture(
    string Sha256, string Name, string Path, PictureHeader Header, PictureRegion? Outline, PixelBox? Box, PicturePoint? At, ValueList<PicturePoint> Others);
