using Lidoff.Evidence.Entries;
using Lidoff.Opening.Kinds;

namespace Lidoff.Bench.Rooms.Open;

/// <summary>A step that was done.</summary>
/// <param name="Entry">Its entry.</param>
/// <param name="Specimen">The specimen it was done to; empty where none was named.</param>
/// <param name="Step">What was stored.</param>
/// <param name="Picture">Hash of the stored picture it names; empty where none is found.</param>
/// <param name="Weighed">What was weighed at it, in words.</param>
/// <param name="At">When it was stored, "2026-03-02 10:15" UTC.</param>
public sealed record StepRow(EntryId Entry, string Specimen, StepSighting Step, string Picture, ValueList<string> Weighed, string At);
