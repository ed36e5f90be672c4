using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Weighing.Modelling;

/// <summary>A picture that has known lengths, with its cameras fitted to them and to what its own edges say.</summary>
/// <param name="Scale">The known lengths.</param>
/// <param name="Measuring">What lengths in it are measured by, or the faults of its known lengths.</param>
/// <param name="Usable">The same by those known lengths alone that lie in the picture, for what is shown of the scale; null where none does.</param>
/// <param name="LookedAt">The machine's look that counts in it; null where there is none.</param>
/// <param name="Camera">What another picture of the same camera and zoom tells; null where none does.</param>
public sealed record FittedPicture(PictureScale Scale, Outcome<ScaledPicture> Measuring, ScaledPicture? Usable, EntryId? LookedAt, PictureCamera? Camera = null)
{
    /// <summary>What lengths in it rest on besides its known lengths and itself.</summary>
    public IEnumerable<EntryId> RestsOn => [.. LookedAt is { } look ? new[] { look } : [], .. Camera?.RestsOn ?? []];
}
