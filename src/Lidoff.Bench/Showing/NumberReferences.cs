using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Opening.Kinds;
using Lidoff.Seeing.Kinds;
using Lidoff.Telling.Claims;

namespace Lidoff.Bench.Showing;

/// <summary>What of a dossier has a number that others can lean on.</summary>
public static class NumberReferences
{
    /// <summary>References in natural order: lengths, bodies, pitches, masses, currents of states, reckonings.</summary>
    public static IReadOnlyList<string> Of(IDossierView view) =>
    [
        .. view.Live<LengthSighting>().Select(each => $"length:{each.Value.Spot}:{each.Value.What}")
            .Concat(view.Live<BodySighting>().SelectMany(each => Body(each.Value)))
            .Concat(view.Live<PitchSighting>().Select(each => "pitch:" + each.Value.Spot))
            .Concat(view.Live<MassSighting>().Select(each => "mass:" + (each.Value.Spot.Length > 0 ? each.Value.Spot : "whole")))
            .Concat(view.Live<StateSighting>().Where(each => each.Value.CurrentUa is not null).Select(each => "state:" + each.Value.Name))
            .Concat(ReckoningNames.Of(view).Select(name => "reckoning:" + name))
            .Distinct(StringComparer.Ordinal).Order(NaturalOrder.Instance),
    ];

    private static IEnumerable<string> Body(BodySighting body)
    {
        yield return $"body:{body.Spot}:length";
        yield return $"body:{body.Spot}:width";
        if (body.HeightMm is not null) yield return $"body:{body.Spot}:height";
    }
}
