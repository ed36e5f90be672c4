using Lidoff.Evidence.Entries;

namespace Lidoff.Telling.Drawing.Diagrams;

/// <summary>A diagram of a dossier.</summary>
/// <param name="Name">Its short name: supply or blocks.</param>
/// <param name="Title">Its heading.</param>
/// <param name="Drawn">The drawing.</param>
/// <param name="Remarks">What does not fit in it, in sentences.</param>
public sealed record DossierDiagram(string Name, string Title, DrawnDiagram Drawn, ValueList<string> Remarks);
