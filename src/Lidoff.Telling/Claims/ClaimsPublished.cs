using Lidoff.Evidence.Entries;

namespace Lidoff.Telling.Claims;

/// <summary>A publication: what every claim said when a person let it out.</summary>
public sealed record ClaimsPublished(ValueList<ClaimBaseline> Claims);
