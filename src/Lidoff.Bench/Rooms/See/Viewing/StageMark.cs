namespace Lidoff.Bench.Rooms.See.Viewing;

/// <summary>A landmark, or a place carried over from another picture, drawn over this one.</summary>
/// <param name="Id">Its handle: "landmark:" and the entry, or "ghost:" and the spot.</param>
/// <param name="Name">What stands beside it, fit to be shown.</param>
/// <param name="X">Its place, px of the picture.</param>
/// <param name="Y">Its place, px of the picture.</param>
/// <param name="Sort">"landmark", "misfit" for one that was left out, or "ghost".</param>
/// <param name="Reach">Radius of the region that holds it nine times in ten, px; 0 for a landmark.</param>
public sealed record StageMark(string Id, string Name, double X, double Y, string Sort, double Reach);
