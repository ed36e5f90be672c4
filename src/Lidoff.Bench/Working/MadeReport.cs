using Lidoff.Evidence.Entries;

namespace Lidoff.Bench.Working;

/// <summary>A report that lies ready to be taken.</summary>
/// <param name="Number">Names it in this run of the workbench, from 1.</param>
/// <param name="Dossier">The dossier it is of.</param>
/// <param name="Path">Where the zip lies.</param>
/// <param name="Bytes">Its length.</param>
/// <param name="Pictures">How many pictures are in it.</param>
/// <param name="Remarks">What is odd about a picture.</param>
public sealed record MadeReport(int Number, string Dossier, string Path, long Bytes, int Pictures, ValueList<string> Remarks);
