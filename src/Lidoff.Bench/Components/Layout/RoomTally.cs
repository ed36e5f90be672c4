namespace Lidoff.Bench.Components.Layout;

/// <summary>A room in the strip: its name in addresses, its title, its place, which is also its key, and what it holds in words.</summary>
public sealed record RoomTally(string Name, string Title, int Order, string Tally);
