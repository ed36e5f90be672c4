namespace Lidoff.Catalogue.Parts;

/// <summary>One pin: its number as the drawing has it ("13", "A4"), its name, its electrical type word (power_in, input, …; empty when unknown).</summary>
public sealed record Pin(string Number, string Name, string Type);
