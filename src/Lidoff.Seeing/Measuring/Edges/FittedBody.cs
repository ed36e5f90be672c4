using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>A body whose four sides were looked for.</summary>
/// <param name="Corners">Where its sides meet, in the order clicked; the fourth was clicked or follows from three.</param>
/// <param name="Sides">Its sides, from each corner to the next.</param>
/// <param name="First">Across it along its first side: from the middle of the fourth side to that of the second.</param>
/// <param name="Second">Across it along its second side: from the middle of the first side to that of the third.</param>
public sealed record FittedBody(ValueList<PicturePoint> Corners, ValueList<FittedSide> Sides, FittedLength First, FittedLength Second)
{
    /// <summary>True where at least one side lies on an edge.</summary>
    public bool OnEdge => Sides.Any(side => side.OnEdge);
}
