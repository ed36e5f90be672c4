namespace Lidoff.Evidence.Entries;

/// <summary>One key of an evidence kind as <c>note --list-kinds</c> shows it: JSON type word, whether it must be there, meaning with unit.</summary>
public sealed record KindKey(string Key, string Type, bool Required, string Says);
