using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Boards;

/// <summary>Where everything lies at one step of the fit: how each picture sees the board, and where each landmark is on it, mm.</summary>
internal sealed record BoardState(IReadOnlyList<BoardView> Views, IReadOnlyList<PicturePoint> Places);
