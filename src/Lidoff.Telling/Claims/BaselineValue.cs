using Lidoff.Evidence.Entries;

namespace Lidoff.Telling.Claims;

/// <summary>One published value: a number with its spread in its unit, or a name; and the entries it rested on, in id order.</summary>
public sealed record BaselineValue(string Reference, double? Value, double? U, double? Low, double? High, string? Text, ValueList<string> RestsOn);
