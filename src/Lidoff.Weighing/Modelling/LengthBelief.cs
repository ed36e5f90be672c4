using Lidoff.Evidence.Entries;

namespace Lidoff.Weighing.Modelling;

/// <summary>Everything known about one length of one spot: each line of evidence, and for those that led nowhere the sentence why.</summary>
public sealed record LengthBelief(string Spot, string What, ValueList<LengthReading> Readings, ValueList<string> Problems);
