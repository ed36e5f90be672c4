namespace Lidoff.Catalogue.Importing;

/// <summary>
/// What a person answered about a file: whether its decimal mark is a comma (null: not asked; then a table whose separator is not
/// a comma may use commas, and what could be thousands is asked).
/// </summary>
public sealed record ImportOptions(bool? DecimalComma = null);
