using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Measuring.Rulers;

/// <summary>A ruler that lies in the picture: where its row of lines roughly runs, along the lines' middles.</summary>
/// <param name="From">Near one end of the row.</param>
/// <param name="To">Near the other end.</param>
/// <param name="TickMm">Distance from one line to the next, mm; null to tell it by its longer lines.</param>
/// <param name="HeightMm">Height of its face above the board, mm (default 0).</param>
public sealed record AskedRuler(PicturePoint From, PicturePoint To, double? TickMm = null, double HeightMm = 0);
