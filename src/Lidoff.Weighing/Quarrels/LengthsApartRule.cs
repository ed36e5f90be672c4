using Lidoff.Evidence.Folding;
using Lidoff.Numbers.Quantities;
using Lidoff.Seeing.Kinds;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Weighing.Quarrels;

/// <summary>
/// Two readings of one length whose difference is beyond what their doubts allow: more than five standard uncertainties of the
/// difference, which chance gives less than once in a million (normal distribution).
/// </summary>
public sealed class LengthsApartRule : IQuarrelRule
{
    private const double Beyond = 5;

    /// <inheritdoc/>
    public string Name => "lengths apart";

    /// <inheritdoc/>
    public IEnumerable<Quarrel> Find(IDossierView view, DossierModel model)
    {
        var lengths = view.Live<LengthSighting>().Select(length => (length.Value.Spot, length.Value.What)).Distinct()
            .OrderBy(length => length.Spot, StringComparer.Ordinal).ThenBy(length => length.What, StringComparer.Ordinal);
        foreach (var (spot, what) in lengths)
        {
            var readings = model.Length(spot, what).Readings;
            for (var i = 0; i < readings.Count; i++)
            {
                for (var j = i + 1; j < readings.Count; j++)
                {
                    var (a, b) = (readings[i], readings[j]);
                    var apart = Math.Abs(a.Mm - b.Mm);
                    if (apart <= Beyond * Math.Sqrt((a.UMm * a.UMm) + (b.UMm * b.UMm))) continue;
                    yield return new(
                        Name,
                        [.. new[] { a.Sighting, b.Sighting }.Order()],
                        $"{what} of {spot} cannot be {QuantityText.Noted(a.Mm, a.UMm, "mm")} and {QuantityText.Noted(b.Mm, b.UMm, "mm")}.",
                        $"measure {what} of {spot} once more with a calliper");
                }
            }
        }
    }
}
