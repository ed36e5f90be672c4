namespace Lidoff.Weighing.Blocks;

/// <summary>A part of the supply tree: its spot (or the rail's name where nobody knows what makes it), what it does, its role, and the voltage measured at its pin, V.</summary>
public sealed record SupplyNode(string Name, SupplySort Sort, string Role, double? V);
