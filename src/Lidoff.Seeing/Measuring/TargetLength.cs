using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Measuring;

/// <summary>A length to find: its name and its two ends.</summary>
/// <param name="Id">Name as the asker wrote it; hostile text.</param>
/// <param name="From">One end.</param>
/// <param name="To">The other end, at another place.</param>
/// <param name="HeightMm">Height of both ends above the board, mm, positive towards the camera (default 0).</param>
/// <param name="ClickPx">Standard uncertainty of each of its clicked ends, px, zero or more; null for that of the job.</param>
public sealed record TargetLength(string Id, PicturePoint From, PicturePoint To, double HeightMm = 0, double? ClickPx = null)
{
    /// <summary>True where its ends were fitted to edges, so that <see cref="ClickPx"/> holds what those edges leave open.</summary>
    public bool OnEdges { get; init; }
}
