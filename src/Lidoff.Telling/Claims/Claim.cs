using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Grading;

namespace Lidoff.Telling.Claims;

/// <summary>
/// A claim as it reads today, with its values, grade, state, and every entry it rests on (its own first). <paramref name="SupportErased"/>: something
/// that it rested on when it was published has been erased by right since.
/// </summary>
public sealed record Claim(
    string Name,
    string Text,
    IReadOnlyList<ClaimPiece> Pieces,
    IReadOnlyList<ClaimValue> Values,
    Grade Grade,
    ClaimState State,
    ClaimBaseline? Published,
    EntryId Written,
    IReadOnlyList<EntryId> RestsOn,
    bool SupportErased);
