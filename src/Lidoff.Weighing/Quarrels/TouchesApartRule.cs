using Lidoff.Evidence.Folding;
using Lidoff.Numbers.Quantities;
using Lidoff.Tracing.Kinds;
using Lidoff.Tracing.Nets;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Weighing.Quarrels;

/// <summary>
/// Two touches of one pair of points whose resistances do not go together: a beep and none, a beep or some ohms and an open circuit. What
/// nets say of a pair already is left to them.
/// </summary>
public sealed class TouchesApartRule : IQuarrelRule
{
    // Leads and contacts of hand probes, and the meter's own part. Common practice, no source.
    private const double LeadsOhm = 0.3;
    private const double MeterPart = 0.02;

    /// <inheritdoc/>
    public string Name => "touches apart";

    /// <inheritdoc/>
    public IEnumerable<Quarrel> Find(IDossierView view, DossierModel model)
    {
        var sitting = new Lazy<OneSitting>(() => new(view, unnamedIsOne: true));
        var told = new Lazy<List<NetContradiction>>(() => [.. NetBook.Of(view).Contradictions.Where(each => each.Impossible)]);
        foreach (var pair in TouchPairs.Of(view))
        {
            foreach (var (a, b) in Apart.Pairs(pair).Where(two => Fight(two.First.Value, two.Second.Value) && sitting.Value.Holds(two.First, two.Second)))
            {
                if (told.Value.Exists(each => each.Members.Contains(a.Id) && each.Members.Contains(b.Id))) continue;
                yield return new(
                    Name,
                    [.. new[] { a.Id, b.Id }.Order()],
                    $"{a.Value.A.Text} and {a.Value.B.Text} cannot {Does(a.Value)} and {Does(b.Value)}, with one meter and nothing changed between.",
                    $"touch {a.Value.A.Text} and {a.Value.B.Text} once more, with the cell out and the capacitors discharged, and take back the touch that is wrong",
                    1);
            }
        }
    }

    private static bool Fight(TouchSighting a, TouchSighting b)
    {
        if (NetEvidence.Voided(a) || NetEvidence.Voided(b)) return false;
        // A meter beeps or does not; only two thresholds that were both noted can tell that it was two meters.
        if (Beeps(a) && Silent(b)) return !(a.ThresholdOhm > b.ThresholdOhm);
        if (Beeps(b) && Silent(a)) return !(b.ThresholdOhm > a.ThresholdOhm);
        return Most(a) < Least(b) || Most(b) < Least(a);
    }

    private static bool Beeps(TouchSighting touch) => touch.Beep == true;

    private static bool Silent(TouchSighting touch) => touch is { Beep: false, Ohms: null, Open: false };

    // Above what beeps, a meter's range, its polarity and a capacitor that fills up tell different ohms of one pair, and "open" of a low range.
    private static double Most(TouchSighting touch) => touch switch
    {
        { Ohms: { } ohms } when ohms + Doubt(touch) <= NetEvidence.JoinsBeepOhm => ohms + Doubt(touch),
        { Beep: true } => touch.ThresholdOhm ?? NetEvidence.MostBeepOhm,
        _ => double.PositiveInfinity,
    };

    private static double Least(TouchSighting touch) => touch switch
    {
        { Open: true } => NetEvidence.OpenOhm,
        { Ohms: { } ohms } => Math.Max(0, ohms - Doubt(touch)),
        { Beep: false } => touch.ThresholdOhm ?? NetEvidence.LeastBeepOhm,
        _ => 0,
    };

    // Four standard uncertainties.
    private static double Doubt(TouchSighting touch) => 4 * (touch.UOhm ?? LeadsOhm + (MeterPart * touch.Ohms!.Value));

    private static string Does(TouchSighting touch) => touch switch
    {
        { Open: true } => "read open",
        { Ohms: { } ohms } => "read " + QuantityText.Value(ohms, Units.Ohm),
        { Beep: true } => touch.ThresholdOhm is { } threshold ? $"beep below {QuantityText.Value(threshold, Units.Ohm)}" : "beep",
        _ => touch.ThresholdOhm is { } threshold ? $"stay silent above {QuantityText.Value(threshold, Units.Ohm)}" : "stay silent",
    };
}
