namespace Lidoff.Telling.Documents;

/// <summary>
/// A report as a tree: what it says, without how it looks. One tree feeds every writer, so that the page, the JSON and a later
/// PDF or script can never say different things.
/// </summary>
/// <param name="Title">Title; hostile text.</param>
/// <param name="Notice">A line shown on every page (for a demo: that everything is invented); empty for none.</param>
/// <param name="Sections">Sections in reading order.</param>
public sealed record Document(string Title, string Notice, IReadOnlyList<Section> Sections);
