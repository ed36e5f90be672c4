namespace Lidoff.Catalogue.Tables;

/// <summary>One shipped table: file name, kind (<c>parts</c> or <c>outlines</c>), rows, SHA-256 of its bytes in hex, licence word, file with licence and attribution.</summary>
public sealed record ManifestFile(string File, string Kind, int Rows, string Sha256, string Licence, string Notice);
