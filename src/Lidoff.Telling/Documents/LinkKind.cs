namespace Lidoff.Telling.Documents;

/// <summary>Where a link of a report may lead.</summary>
public enum LinkKind
{
    /// <summary>An anchor of the same document.</summary>
    Anchor,

    /// <summary>A file in the report's own folder.</summary>
    File,
}
