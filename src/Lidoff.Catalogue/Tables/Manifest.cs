namespace Lidoff.Catalogue.Tables;

/// <summary>The list of the shipped tables: format number, date of the data, files.</summary>
public sealed record Manifest(int Format, string Date, IReadOnlyList<ManifestFile> Files);
