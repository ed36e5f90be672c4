namespace Lidoff.Naming.Asking;

/// <summary>A part answered on a bus: type word in lower case ("i2c", "spi"; empty when not said), 7-bit address where the bus has one.</summary>
public sealed record BusFact(string Type, int? Address);
