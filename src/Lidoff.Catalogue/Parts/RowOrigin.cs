namespace Lidoff.Catalogue.Parts;

/// <summary>Where a fact came from: the table (a shipped file or an import) and its line, counted from 1 with the header as line 1.</summary>
public readonly record struct RowOrigin(string Table, int Line);
