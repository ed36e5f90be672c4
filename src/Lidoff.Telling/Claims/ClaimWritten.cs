namespace Lidoff.Telling.Claims;

/// <summary>A claim as a person wrote it. <paramref name="Why"/>: it says why something was done, so its grade is E2 at most.</summary>
public sealed record ClaimWritten(string Name, string Text, bool Why);
