using Lidoff.Evidence.Entries;

namespace Lidoff.Bench.Rooms.Trace;

/// <summary>Something that answered on a bus, or an identity register that was read.</summary>
/// <param name="Entry">Its entry.</param>
/// <param name="Bus">Sort of bus; empty for a register whose bus was not said.</param>
/// <param name="Address">"0x52"; empty where there is none.</param>
/// <param name="Spot">The part; empty where it is not known.</param>
/// <param name="Says">How often it answered, or register and value.</param>
public sealed record BusRow(EntryId Entry, string Bus, string Address, string Spot, string Says);
