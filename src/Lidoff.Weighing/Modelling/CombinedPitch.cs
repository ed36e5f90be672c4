using Lidoff.Evidence.Folding;
using Lidoff.Numbers.Spreads;
using Lidoff.Seeing.Kinds;

namespace Lidoff.Weighing.Modelling;

/// <summary>The pitch of one row out of what was noted of it and the combs clicked along it.</summary>
internal static class CombinedPitch
{
    /// <summary>Combined; at least one of either. What was noted is one line together: its mean, with its largest doubt.</summary>
    public static CombinedLength Of(IReadOnlyList<Sighting<PitchSighting>> noted, IReadOnlyList<ShapeReading> combs)
    {
        var lines = combs.Select(comb => comb.AsLength()).ToList();
        if (noted.Count > 0)
        {
            var (mm, u) = (noted.Average(pitch => pitch.Value.Mm), noted.Max(pitch => pitch.Value.UMm));
            var half = NormalDistribution.Quantile(0.95) * u;
            lines.Add(new(mm, u, 0, mm - half, mm + half, "", "", noted[0].Id, [], "as noted", [], null));
        }

        return CombinedLength.Of(lines);
    }
}
