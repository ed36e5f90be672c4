namespace Lidoff.Naming.Dates;

/// <summary>
/// One way to read a date code: the weeks it would mean, the rule's name, and the probability that this is what the code means.
/// A code's probabilities add up to less than one; the rest is "no date at all, or by a rule not known here".
/// </summary>
public sealed record DateReading(WeekSpan Weeks, string Rule, double P);
