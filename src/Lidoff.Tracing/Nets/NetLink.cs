using Lidoff.Evidence.Entries;
using Lidoff.Tracing.Kinds;

namespace Lidoff.Tracing.Nets;

/// <summary>
/// One reason why two points are one net, or are not: the points, how it is known, the entry, and the sentence. <paramref name="Ohm"/> bounds
/// the resistance between them: for what joins from above, for what holds apart from below; 0 where a person says they are one. <paramref name="Specimen"/>: the one that was touched; empty where none was named.
/// </summary>
public sealed record NetLink(TouchPoint A, TouchPoint B, NetGrade Grade, EntryId Entry, string Say, double Ohm, string Specimen = "");
