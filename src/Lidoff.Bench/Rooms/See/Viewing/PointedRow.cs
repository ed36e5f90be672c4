using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Kinds;

namespace Lidoff.Bench.Rooms.See.Viewing;

/// <summary>A spot pointed at in a picture.</summary>
/// <param name="Entry">Its entry.</param>
/// <param name="Specimen">The specimen it was noted for; empty for none.</param>
/// <param name="At">Its place, px; a box by its middle.</param>
/// <param name="Value">What was stored.</param>
/// <param name="Mark">What was last read on it, lines with '/' between them; empty for nothing.</param>
public sealed record PointedRow(EntryId Entry, string Specimen, PicturePoint At, SpotSighting Value, string Mark);
