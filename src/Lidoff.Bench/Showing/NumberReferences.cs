using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Numbers.Quantities;
using Lidoff.Opening.Kinds;
using Lidoff.Reckoning.Bound;
using Lidoff.Reckoning.Reckon;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring.Shapes;
using Lidoff.Telling.Claims;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Bench.Showing;

/// <summary>What of a dossier has a number that others can lean on.</summary>
public static class NumberReferences
{
    /// <summary>References in natural order: lengths, bodies, pitches, areas, angles, masses, currents of states, reckonings.</summary>
    public static IReadOnlyList<NumberReference> Of(IDossierView view) =>
    [
        .. view.Live<LengthSighting>().Select(each => $"length:{each.Value.Spot}:{each.Value.What}")
            .Concat(view.Live<BodySighting>().SelectMany(each => Body(each.Value)))
            .Concat(view.Live<PitchSighting>().Select(each => "pitch:" + each.Value.Spot))
            .Concat(view.Live<ClickedShape>().Where(each => each.Value.Shape is ShapeKind.Circle or ShapeKind.Pitch).Select(each => ShapeReference.Of(each.Value))).Select(name => new NumberReference(name, Dimensions.Length))
            .Concat(view.Live<ClickedShape>().Where(each => each.Value.Shape == ShapeKind.Area).Select(each => new NumberReference(ShapeReference.Of(each.Value), Dimensions.Area)))
            .Concat(view.Live<ClickedShape>().Where(each => each.Value.Shape == ShapeKind.Angle).Select(each => new NumberReference(ShapeReference.Of(each.Value), Dimension.None)))
            .Concat(view.Live<MassSighting>().Select(each => new NumberReference("mass:" + (each.Value.Spot.Length > 0 ? each.Value.Spot : "whole"), Dimensions.Mass)))
            .Concat(view.Live<StateSighting>().Where(each => each.Value.CurrentUa is not null).Select(each => new NumberReference("state:" + each.Value.Name, Dimensions.Current)))
            .Concat(Reckoned(view))
            .DistinctBy(each => each.Reference, StringComparer.Ordinal).OrderBy(each => each.Reference, NaturalOrder.Instance),
    ];

    // A number that was bound anew has the unit of its newest calculation; one of an unknown calculation has no number.
    private static IEnumerable<NumberReference> Reckoned(IDossierView view)
    {
        var bindings = view.Live<ReckonBinding>().ToLookup(each => each.Value.Reckoning, each => each.Value.Calculation, StringComparer.Ordinal);
        foreach (var name in ReckoningNames.Of(view))
        {
            if (bindings[name].LastOrDefault() is { } calculation && Reckoner.Find(calculation) is { Ok: true } found) yield return new("reckoning:" + name, found.Value.Info.Unit.Dimension);
        }
    }

    private static IEnumerable<string> Body(BodySighting body)
    {
        yield return $"body:{body.Spot}:length";
        yield return $"body:{body.Spot}:width";
        if (body.HeightMm is not null) yield return $"body:{body.Spot}:height";
    }
}
