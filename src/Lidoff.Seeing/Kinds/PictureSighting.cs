namespace Lidoff.Seeing.Kinds;

/// <summary>
/// A stored file taken as a picture: the file by content hash (64 hex digits) or name, its own name, side of the board it shows, zoom tag, light and
/// camera. Texts are empty where nothing was said, and hostile.
/// </summary>
public sealed record PictureSighting(string File, string Name, PictureSide Side, string Zoom, string Light, string Camera);
