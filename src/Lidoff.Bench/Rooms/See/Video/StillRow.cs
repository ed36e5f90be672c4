namespace Lidoff.Bench.Rooms.See.Video;

/// <summary>A picture taken out of a video.</summary>
/// <param name="Sha256">Hash of the picture.</param>
/// <param name="FileName">Its name; hostile text.</param>
/// <param name="Second">Which second of the video, s.</param>
public sealed record StillRow(string Sha256, string FileName, double Second);
