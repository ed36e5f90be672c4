using Lidoff.Evidence.Pictures;

namespace Lidoff.Telling.Drawing.Labelling;

/// <summary>Where a label stands and where its leader runs, in px of the whole drawing.</summary>
/// <param name="Key">The label's name, as wished.</param>
/// <param name="Left">True in the column left of the picture; its words then end at the column's inner edge.</param>
/// <param name="X">Left edge of its words.</param>
/// <param name="Y">Upper edge of its words.</param>
/// <param name="Width">Width of its words.</param>
/// <param name="Height">Height of its words.</param>
/// <param name="Port">Where the leader leaves the label.</param>
/// <param name="Tip">The point it leads to.</param>
public sealed record LabelPlace(string Key, bool Left, double X, double Y, double Width, double Height, PicturePoint Port, PicturePoint Tip);
