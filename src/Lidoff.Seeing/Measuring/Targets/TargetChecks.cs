using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Measuring.Targets;

/// <summary>Whether what was found can serve.</summary>
internal static class TargetChecks
{
    // What a flat grid and a lens with one term cannot take up is about a tenth of what bowed paper makes wrong in all: on rendered paper
    // 39 mm wide and 75 mm from the camera, 0.5 mm of bow left 0.017 % of its length and made 0.22 % wrong, 2 mm left 0.06 % and made 0.8 %.
    private const double MostBent = 0.0003;

    /// <summary>Why it cannot: paper that is not flat, or a lens that one radial term does not describe; null where it can.</summary>
    public static Fault? Flat(FoundTarget found) =>
        found.BentSteps > MostBent * Math.Max(found.Columns, found.Rows)
            ? new("target", "a flat target", TargetSentences.NotFlat(found.BentSteps, Math.Max(found.Columns, found.Rows)))
            : null;
}
