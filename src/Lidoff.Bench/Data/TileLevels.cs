namespace Lidoff.Bench.Data;

/// <summary>A zoomable picture: upright size, side of a tile, overlap of neighbours, all in pixels, and number of levels.</summary>
public sealed record TileLevels(int Width, int Height, int TileSize, int Overlap, int Levels);
