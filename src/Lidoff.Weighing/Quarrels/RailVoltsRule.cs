using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Numbers.Quantities;
using Lidoff.Tracing.Kinds;
using Lidoff.Tracing.Nets;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Weighing.Quarrels;

/// <summary>A voltage read between two points of which rails, or a rail and ground, say another, beyond all doubts and beyond what another state of the device explains.</summary>
public sealed class RailVoltsRule : IQuarrelRule
{
    /// <inheritdoc/>
    public string Name => "volts against a rail";

    /// <inheritdoc/>
    public IEnumerable<Quarrel> Find(IDossierView view, DossierModel model)
    {
        if (!view.Live<RailDrawn>().Any(rail => rail.Value.V is not null) || (!view.Live<TouchSighting>().Any(touch => touch.Value.Volts is not null) && !view.Live<SupplySighting>().Any(supply => supply.Value.Pin.Length > 0))) yield break;
        var sitting = new Lazy<OneSitting>(() => new(view, unnamedIsOne: true));
        var points = new SupplyPoints(view);
        var read = view.Live<TouchSighting>().Where(touch => touch.Value.Volts is not null).Select(touch => (touch.Id, touch.Specimen, touch.Value.A, touch.Value.B, V: touch.Value.Volts!.Value, U: VoltsApartRule.Doubt(touch.Value)))
            .Concat(view.Live<SupplySighting>().Where(supply => supply.Value.Pin.Length > 0)
                .Select(supply => (supply.Id, supply.Specimen, A: new TouchPoint(supply.Value.Spot + "." + supply.Value.Pin), B: new TouchPoint(NetEvidence.Ground), supply.Value.V, U: supply.Value.UV)));
        foreach (var (id, specimen, a, b, v, u) in read)
        {
            if (points.Known(a) is not { } one || points.Known(b) is not { } other || (one.Entry is null && other.Entry is null) || one.Entry == other.Entry) continue;
            var (expected, doubt) = (one.V - other.V, Math.Sqrt((one.U * one.U) + (other.U * other.U)));
            if (!Apart.Of(v, u, expected, doubt) || points.StateExplains(a, b, v, one.V, other.V) || Elsewhere(one.Specimen) || Elsewhere(other.Specimen)) continue;
            var why = other.Entry is null ? one.Name : one.Entry is null ? other.Name : $"{one.Name} less {other.Name}";
            EntryId[] members = [.. new EntryId?[] { id, one.Entry, other.Entry }.OfType<EntryId>().Distinct().Order()];
            yield return new(
                Name,
                [.. members],
                $"{a.Text} against {b.Text} cannot be {QuantityText.Noted(v, u, "V")} where {why} is {QuantityText.Noted(expected, doubt, "V")}, in the state in which the rail is up.",
                $"read {a.Text} against {b.Text} once more with the device running, then take back the reading or settle the rail anew",
                2);

            bool Elsewhere(string other) => other.Length > 0 && specimen.Length > 0 && !sitting.Value.Same(other, specimen);
        }
    }
}
