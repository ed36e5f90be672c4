using Lidoff.Catalogue.Parts;

namespace Lidoff.Catalogue.Searching;

/// <summary>One part that a search found, and how.</summary>
public sealed record SearchRow(Part Part, SearchTier Tier);
