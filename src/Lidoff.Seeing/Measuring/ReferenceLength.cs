using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Measuring;

/// <summary>A length known from elsewhere that lies in the picture.</summary>
/// <param name="From">One end.</param>
/// <param name="To">The other end, at another place.</param>
/// <param name="LengthMm">Its length, mm, above zero.</param>
/// <param name="UMm">Standard uncertainty of the length, mm, zero or more (default 0: a definition).</param>
/// <param name="HeightMm">Height of both ends above the board, mm, positive towards the camera (default 0).</param>
/// <param name="ClickPx">Standard uncertainty of each of its clicked ends, px, zero or more; null for that of the job.</param>
public sealed record ReferenceLength(PicturePoint From, PicturePoint To, double LengthMm, double UMm = 0, double HeightMm = 0, double? ClickPx = null);
