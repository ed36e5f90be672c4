namespace Lidoff.Seeing.Composing;

/// <summary>A tile and how it lies in the frame of the first one.</summary>
internal sealed record LaidTile(Tile Tile, Similarity Map, TileBend Bend)
{
    private readonly Similarity back = Map.Inverse();

    /// <summary>Where a place of the tile lies.</summary>
    public (double X, double Y) To(double x, double y)
    {
        var (u, v) = Bend.Straight(x, y);
        return Map.Apply(u, v);
    }

    /// <summary>Which place of the tile lies there.</summary>
    public (double X, double Y) From(double x, double y)
    {
        var (u, v) = back.Apply(x, y);
        return Bend.Bent(u, v);
    }

    /// <summary>Left, top, right and bottom of what it covers.</summary>
    public (double Left, double Top, double Right, double Bottom) Box()
    {
        var corners = new[] { To(0, 0), To(Tile.Width, 0), To(0, Tile.Height), To(Tile.Width, Tile.Height) };
        return (corners.Min(at => at.X), corners.Min(at => at.Y), corners.Max(at => at.X), corners.Max(at => at.Y));
    }
}
