using Lidoff.Evidence.Folding;
using Lidoff.Numbers.Quantities;
using Lidoff.Tracing.Kinds;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Weighing.Quarrels;

/// <summary>Two voltages of one pair of points that are apart by more than their doubts and by more than another state of the device explains.</summary>
public sealed class VoltsApartRule : IQuarrelRule
{
    // A hand meter: half a per cent and a digit of its 20 V range. Common practice, no source.
    private const double MeterPart = 0.005;
    private const double MeterDigit = 0.01;

    /// <inheritdoc/>
    public string Name => "volts apart";

    /// <inheritdoc/>
    public IEnumerable<Quarrel> Find(IDossierView view, DossierModel model)
    {
        var sitting = new Lazy<OneSitting>(() => new(view, unnamedIsOne: true));
        var points = new Lazy<SupplyPoints>(() => new(view));
        foreach (var pair in TouchPairs.Of(view))
        {
            foreach (var (a, b) in Apart.Pairs([.. pair.Where(touch => touch.Value.Volts is not null)]))
            {
                var (one, other) = (TouchPairs.Volts(a.Value)!.Value, TouchPairs.Volts(b.Value)!.Value);
                if (!Apart.Of(one, Doubt(a.Value), other, Doubt(b.Value)) || !sitting.Value.Holds(a, b) || points.Value.StateExplains(a.Value.A, a.Value.B, one, other)) continue;
                // Both are said from the first one's red lead.
                var second = a.Value.A == b.Value.A ? b.Value.Volts!.Value : -b.Value.Volts!.Value;
                yield return new(
                    Name,
                    [.. new[] { a.Id, b.Id }.Order()],
                    $"{a.Value.A.Text} against {a.Value.B.Text} cannot be {QuantityText.Noted(a.Value.Volts!.Value, Doubt(a.Value), "V")} and {QuantityText.Noted(second, Doubt(b.Value), "V")} in one state of the device.",
                    $"read {a.Value.A.Text} against {a.Value.B.Text} once more in a state that you name, and take back the reading that is wrong",
                    2);
            }
        }
    }

    /// <summary>The standard uncertainty of a voltage, V; the meter's own where none was noted.</summary>
    internal static double Doubt(TouchSighting touch) => touch.UV ?? MeterDigit + (MeterPart * Math.Abs(touch.Volts!.Value));
}
