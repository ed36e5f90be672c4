namespace Lidoff.Telling.Claims;

/// <summary>Words of a claim, or a reference into the dossier.</summary>
public sealed record ClaimPiece(string Text, bool IsReference);
