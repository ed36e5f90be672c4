using Lidoff.Evidence.Entries;
using Lidoff.Tracing.Kinds;

namespace Lidoff.Tracing.Nets;

/// <summary>One reason why two points are one net, or are not: the points, how it is known, the entry, and the sentence.</summary>
public sealed record NetLink(TouchPoint A, TouchPoint B, NetGrade Grade, EntryId Entry, string Say);
