using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Entries;

/// <summary>What became of one line of <c>note</c>.</summary>
/// <param name="Number">The line's number in the input, from 1.</param>
/// <param name="Kind">The word in <c>"kind"</c>; empty where it could not be read.</param>
/// <param name="Draft">Place of its draft among the batch's drafts; null where it was refused.</param>
/// <param name="Faults">Everything that is wrong with it.</param>
/// <param name="Remarks">Sentences about what was passed over, such as unknown keys.</param>
public sealed record NoteLine(int Number, string Kind, int? Draft, IReadOnlyList<Fault> Faults, IReadOnlyList<string> Remarks);
