using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Kinds;

namespace Lidoff.Bench.Rooms.See.Viewing;

/// <summary>A known length in a picture.</summary>
/// <param name="Entry">Its entry.</param>
/// <param name="Specimen">The specimen it was noted for; empty for none.</param>
/// <param name="Value">What was stored.</param>
/// <param name="Says">"26 ± 0.05 mm".</param>
public sealed record ScaleRow(EntryId Entry, string Specimen, ScaleSighting Value, string Says);
