using Lidoff.Evidence.Entries;

namespace Lidoff.Telling.Drawing.Plans;

/// <summary>A box to be placed: its name, the lines of words in it, and the class that colours it.</summary>
public sealed record PlanBox(string Name, ValueList<string> Words, string Style);
