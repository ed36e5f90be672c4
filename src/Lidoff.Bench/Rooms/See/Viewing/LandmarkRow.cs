using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Kinds;

namespace Lidoff.Bench.Rooms.See.Viewing;

/// <summary>A landmark pointed at in a picture.</summary>
/// <param name="Entry">Its entry.</param>
/// <param name="Specimen">The specimen it was noted for; empty for none.</param>
/// <param name="At">Its place, px.</param>
/// <param name="Value">What was stored.</param>
/// <param name="Rest">How far it lies from where the others put it ("12 µm"); empty where nothing else speaks of it.</param>
/// <param name="Fits">False where it was left out because it does not fit.</param>
public sealed record LandmarkRow(EntryId Entry, string Specimen, PicturePoint At, LandmarkSighting Value, string Rest, bool Fits);
