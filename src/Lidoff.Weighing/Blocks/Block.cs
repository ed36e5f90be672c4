namespace Lidoff.Weighing.Blocks;

/// <summary>A block of the diagram: its name (spot, bus or rail), what it is, and the part that sits there; both empty where not known.</summary>
public sealed record Block(string Name, BlockSort Sort, string Role, string Part);
