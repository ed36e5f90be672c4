using Lidoff.Evidence.Entries;

namespace Lidoff.Bench.Working;

/// <summary>What became of marks that were to be read.</summary>
/// <param name="Read">Read and stored, with text or without.</param>
/// <param name="Empty">Of these, those on which nothing was read.</param>
/// <param name="Same">Read as they had been; nothing was stored anew.</param>
/// <param name="Before">Passed over: these networks have read them.</param>
/// <param name="ByPeople">Passed over: a person has read them.</param>
/// <param name="Unread">Passed over: these networks could not read them before, in the same places.</param>
/// <param name="Refused">Spots whose mark could not be read, with the sentence of why.</param>
public sealed record ReadTally(int Read, int Empty, int Same, int Before, int ByPeople, int Unread, ValueList<(string Spot, string Say)> Refused);
