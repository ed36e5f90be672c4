using Lidoff.Evidence.Entries;

namespace Lidoff.Telling.Drawing.Diagrams;

/// <summary>A box to be placed: its name, the lines of words in it, and the class that colours it.</summary>
public sealed record DiagramBox(string Name, ValueList<string> Words, string Style);
