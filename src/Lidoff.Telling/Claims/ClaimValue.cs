using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Grading;

namespace Lidoff.Telling.Claims;

/// <summary>
/// One value of a claim as it stands now: a number in <paramref name="Unit"/> with standard uncertainty and 90 % interval, or a
/// name (<paramref name="Text"/>), or lost (neither). <paramref name="Printed"/> is how the sentence shows it.
/// </summary>
public sealed record ClaimValue(
    string Reference,
    double? Value,
    double? U,
    double? Low,
    double? High,
    string Unit,
    string? Text,
    string Printed,
    Grade Grade,
    IReadOnlyList<EntryId> RestsOn)
{
    /// <summary>True when what it leans on is gone or never was.</summary>
    public bool Lost => Value is null && Text is null;
}
