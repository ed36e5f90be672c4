namespace Lidoff.Evidence.Entries;

/// <summary>A dossier began. <paramref name="Title"/> is its name in words, hostile text; empty where only the short name is known.</summary>
public sealed record DossierOpened(string Title);
