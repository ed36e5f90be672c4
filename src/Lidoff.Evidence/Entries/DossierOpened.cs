namespace Lidoff.Evidence.Entries;

/// <summary>
/// A dossier began. <paramref name="Title"/> is its name in words, empty where only the short name is known; <paramref name="Notice"/> is a
/// line shown on every page, empty for none. Both are hostile text.
/// </summary>
public sealed record DossierOpened(string Title, string Notice = "");
