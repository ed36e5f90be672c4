using Lidoff.Evidence.Entries;

namespace Lidoff.Telling.Claims;

/// <summary>What was published of one claim: its values, what they rested on, and the program's version then.</summary>
public sealed record ClaimBaseline(string Claim, string Program, ValueList<BaselineValue> Values);
