using Lidoff.Catalogue.Tables;

namespace Lidoff.Catalogue.Importing;

/// <summary>One import read whole and without a fault: its name, the SHA-256 of its bytes (hex), its rows, and sentences about what was left out (unknown columns).</summary>
public sealed record ImportedRows(string FileName, string Hash, IReadOnlyList<CatalogueRow> Rows, IReadOnlyList<string> Notes);
