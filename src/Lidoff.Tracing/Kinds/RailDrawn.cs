using Lidoff.Evidence.Entries;

namespace Lidoff.Tracing.Kinds;

/// <summary>A supply rail as a person settled it. The newest entry of a name counts.</summary>
/// <param name="Rail">Its name, such as VSYS.</param>
/// <param name="V">Voltage, V; null when not known.</param>
/// <param name="UV">Its standard uncertainty, V; null when no voltage was given or no doubt stated.</param>
/// <param name="From">The spot that makes it (cell, charger, converter); empty when not known.</param>
/// <param name="To">Spots that it feeds, each once.</param>
/// <param name="Net">The net it is; empty when none was traced.</param>
/// <param name="Why">Reason; empty when none was given.</param>
/// <param name="Dropped">True when there is no such rail after all.</param>
public sealed record RailDrawn(string Rail, double? V, double? UV, string From, ValueList<string> To, string Net, string Why, bool Dropped);
