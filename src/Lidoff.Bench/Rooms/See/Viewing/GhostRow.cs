using Lidoff.Seeing.Boards;

namespace Lidoff.Bench.Rooms.See.Viewing;

/// <summary>A spot that was pointed at in another picture of the same side, where it lies in this one.</summary>
/// <param name="Spot">Its designator.</param>
/// <param name="From">Name of the picture it comes from.</param>
/// <param name="At">Where, with its doubt.</param>
public sealed record GhostRow(string Spot, string From, CarriedPoint At);
