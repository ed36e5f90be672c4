using Lidoff.Evidence.Entries;

namespace Lidoff.Telling.Dossiers;

/// <summary>Which marks of a dossier are left to read.</summary>
/// <param name="Wanted">Those that are to be read.</param>
/// <param name="Read">How many these networks have read before.</param>
/// <param name="ByPeople">How many a person has read, and nobody asked for them.</param>
/// <param name="Unread">How many these networks could not read before, in the same places.</param>
public sealed record MarksLeft(ValueList<SpotToRead> Wanted, int Read, int ByPeople, int Unread);
