using Lidoff.Evidence.Recomputing;

namespace Lidoff.Weighing.Modelling;

/// <summary>
/// The known lengths that hold in the picture with a given hash: its own, or, where it has none and was made of pictures in the geometry of
/// the first of them, that one's, moved to where they lie in it. They stay the same sightings: what is measured by them is no second
/// line of evidence. Boards are laid by own lengths alone, so that none counts there twice either.
/// </summary>
public sealed class TakenScaleStep(DossierTables tables, ScaleStep scales) : Step<string, PictureScale>
{
    // A made picture may be made of made pictures; hostile lines may go round in a ring.
    private const int MostTurns = 8;

    /// <inheritdoc/>
    public override string Name => "scale taken over";

    /// <inheritdoc/>
    public override PictureScale Compute(string key, IReads reads)
    {
        var (at, x, y) = (key, 0.0, 0.0);
        for (var turn = 0; turn < MostTurns; turn++)
        {
            var own = reads.Read(scales, at);
            if (own.References.Count > 0) return turn == 0 ? own : Moved(own, at, x, y);
            if (tables.Composed.About(at, reads) is not [.., { Value.FirstAt: { } corner } made]) break;
            (at, x, y) = (made.Value.Inputs[0], x + corner.X, y + corner.Y);
        }

        return new([]);
    }

    private static PictureScale Moved(PictureScale own, string from, double x, double y) => new(
        [.. own.References.Select(each => each with
        {
            Value = each.Value with { Reference = each.Value.Reference.Moved(x, y) },
        })],
        from);
}
