using Lidoff.Evidence.Entries;

namespace Lidoff.Seeing.Measuring.Targets;

/// <summary>A checkerboard or dot grid found in a picture, its pitch not yet known.</summary>
/// <param name="Pattern">What repeats.</param>
/// <param name="Places">Every corner or dot that belongs to it.</param>
/// <param name="Tiles">Known places that stand for them, at most six by six.</param>
/// <param name="RestPx">Standard deviation of one coordinate of a place about a flat grid seen through a lens with one radial term, px.</param>
/// <param name="RestSteps">The same as a share of the pitch.</param>
/// <param name="BentSteps">What whole parts of it are off such a grid, as a share of the pitch: no lens with one term and no flat target does this.</param>
/// <param name="StepPx">The pitch in the picture, px.</param>
/// <param name="Bend">The lens's radial term: a place at r half long sides from the middle belongs at r·(1 + bend·r²).</param>
/// <param name="BendU">Its standard uncertainty.</param>
/// <param name="Fills">The part of the picture that it fills, 0 to 1.</param>
public sealed record FoundTarget(
    TargetPattern Pattern, ValueList<TargetPlace> Places, ValueList<TargetTile> Tiles, double RestPx, double RestSteps, double BentSteps, double StepPx, double Bend, double BendU, double Fills)
{
    // A lens is known when its doubt is below what is usual in a phone (CameraBelief), at the end of the long side.
    private const double KnownBend = 0.003;

    /// <summary>Whether the target tells the lens better than what is believed of lenses.</summary>
    public bool LensKnown => BendU < KnownBend;

    /// <summary>Columns between its outermost places.</summary>
    public int Columns => Places.Max(place => place.Column) - Places.Min(place => place.Column) + 1;

    /// <summary>Rows between its outermost places.</summary>
    public int Rows => Places.Max(place => place.Row) - Places.Min(place => place.Row) + 1;
}
