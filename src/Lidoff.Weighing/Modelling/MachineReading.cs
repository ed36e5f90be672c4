using Lidoff.Evidence.Entries;

namespace Lidoff.Weighing.Modelling;

/// <summary>What a machine read of a mark, shown beside what a person read.</summary>
/// <param name="Mark">Its newest reading as one would type it, lines with '/' between.</param>
/// <param name="Entry">The reading's entry.</param>
/// <param name="P">Probability that its likeliest reading is right in every line.</param>
/// <param name="Counts">True where it makes up the belief, since no person read the mark.</param>
public sealed record MachineReading(string Mark, EntryId Entry, double P, bool Counts);
