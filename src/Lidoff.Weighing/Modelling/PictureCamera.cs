using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Measuring.Carrying;

namespace Lidoff.Weighing.Modelling;

/// <summary>What another picture of the same camera and zoom tells of a picture.</summary>
/// <param name="Known">What it tells.</param>
/// <param name="Sha256">That picture.</param>
/// <param name="RestsOn">The sightings that say so.</param>
public sealed record PictureCamera(KnownCamera Known, string Sha256, ValueList<EntryId> RestsOn);
