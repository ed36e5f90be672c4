namespace Lidoff.Seeing.Kinds;

/// <summary>A picture that is one frame of a video.</summary>
/// <param name="File">Content hash of the picture.</param>
/// <param name="Video">Content hash of the video.</param>
/// <param name="Second">Time of the frame in it, s from its beginning.</param>
public sealed record StillSighting(string File, string Video, double Second);
