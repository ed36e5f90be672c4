using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Seeing.Kinds;
using Lidoff.Telling.Claims;

namespace Lidoff.Bench.Showing;

/// <summary>The spots of a dossier.</summary>
public static class SpotNames
{
    /// <summary>Designator of every spot anybody spoke of, in natural order.</summary>
    public static IReadOnlyList<string> Of(IDossierView view) =>
    [
        .. view.Live<SpotSighting>().Select(spot => spot.Value.Spot)
            .Concat(view.Live<MarkSighting>().Select(mark => mark.Value.Spot))
            .Concat(view.Live<ReadingSighting>().Select(reading => reading.Value.Spot))
            .Concat(view.Live<BodySighting>().Select(body => body.Value.Spot))
            .Distinct(StringComparer.Ordinal).Order(NaturalOrder.Instance),
    ];
}
