namespace Lidoff.Seeing.Boards;

/// <summary>Pictures laid one after the other, each as it sees the board; and those that could not be laid.</summary>
internal sealed record BoardStart(IReadOnlyList<(PictureToLay Picture, BoardView View)> Laid, IReadOnlyDictionary<string, PlacedLandmark> Places, IReadOnlyList<LeftOutPicture> LeftOut);
