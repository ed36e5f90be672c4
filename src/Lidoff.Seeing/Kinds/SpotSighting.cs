using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Kinds;

/// <summary>
/// A place worth pointing at: its designator (letter and number), what it is for and why one thinks so, its class (<c>chip</c>,
/// <c>connector</c>, <c>glue</c>, …) and, when it was pointed at, the picture with a place or a box. Texts are empty where nothing was said.
/// </summary>
public sealed record SpotSighting(string Spot, string Role, string Why, string Class, string Picture, PicturePoint? At, PixelBox? Box)
{
    /// <summary>Where it is in its picture: the point that was pointed at, or the middle of the box; null where neither was given.</summary>
    public PicturePoint? Middle => At ?? Box?.Middle;
}
