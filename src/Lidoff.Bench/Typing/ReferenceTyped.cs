using Lidoff.Numbers.Failing;

namespace Lidoff.Bench.Typing;

/// <summary>A reference as people write it: in full, or by the name alone where that means one thing (<c>R1</c>, <c>u3</c>, <c>long side</c>).</summary>
public static class ReferenceTyped
{
    // How many parts a reference of each kind has.
    private static readonly Dictionary<string, int> Kinds = new(StringComparer.Ordinal)
    {
        ["length"] = 3, ["body"] = 3, ["pitch"] = 2, ["part"] = 2, ["mark"] = 2, ["mass"] = 2, ["state"] = 2, ["reckoning"] = 2, ["claim"] = 2,
    };

    /// <summary>
    /// The reference that is meant. <paramref name="known"/> is what the dossier has; a full reference to something it has not yet is
    /// taken as it is, since a question may wait for a measurement.
    /// </summary>
    public static Outcome<string> Read(string? text, IReadOnlyList<string> known)
    {
        Guard.NotNull(known);
        var typed = (text ?? "").Trim();
        if (typed.Length == 0) return TypingSentences.NoReference;
        if (known.Contains(typed, StringComparer.Ordinal)) return typed;
        var meant = known.Where(each => string.Equals(each, typed, StringComparison.OrdinalIgnoreCase)).ToList();
        if (meant.Count == 0) meant = [.. known.Where(each => each.EndsWith(":" + typed, StringComparison.OrdinalIgnoreCase))];
        if (meant.Count == 1) return meant[0];
        if (meant.Count > 1) return TypingSentences.SeveralReferences(typed, meant);
        var parts = typed.Split(':', 3);
        return Kinds.TryGetValue(parts[0], out var count) && parts.Length == count && parts.All(part => part.Trim().Length > 0) ? typed : TypingSentences.UnknownReference(typed);
    }
}
