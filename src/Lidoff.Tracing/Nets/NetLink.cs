using Lidoff.Evidence.Entries;
using Lidoff.Tracing.Kinds;

namespace Lidoff.Tracing.Nets;

/// <summary>
/// One reason why two points are one net, or are not: the points, how it is known, the entry, and the sentence. <paramref name="Ohm"/> bounds
/// the resistance between them: for what joins from above, for what holds apart from below; 0 where a person says they are one.
/// </summary>
public sealed record NetLink(TouchPoint A, TouchPoint B, NetGrade Grade, EntryId Entry, string Say, double Ohm);
