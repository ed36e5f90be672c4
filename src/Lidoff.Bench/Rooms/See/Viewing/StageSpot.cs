namespace Lidoff.Bench.Rooms.See.Viewing;

/// <summary>A letter on a leader line over a picture.</summary>
/// <param name="Id">Its handle: "spot:" and the entry; "outlined:" where it was not pointed at.</param>
/// <param name="Name">Its designator, fit to be shown.</param>
/// <param name="Words">A few words beside it, fit to be shown; may be empty.</param>
/// <param name="X">Its place, px of the picture.</param>
/// <param name="Y">Its place, px of the picture.</param>
/// <param name="On">Whether it is selected.</param>
public sealed record StageSpot(string Id, string Name, string Words, double X, double Y, bool On);
