using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Quantities;
using Lidoff.Numbers.Typed;

namespace Lidoff.Bench.Typing;

/// <summary>A typed line taken apart at its commas and semicolons. A comma without a blank behind it is a decimal comma.</summary>
internal static class Pieces
{
    /// <summary>The pieces, trimmed, none empty.</summary>
    public static IReadOnlyList<string> Of(string text) =>
        text.Replace(", ", ";", StringComparison.Ordinal).Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);

    /// <summary>The rest of a piece behind a word that opens it; null when it does not begin with one of them.</summary>
    public static string? After(string piece, params ReadOnlySpan<string> words)
    {
        foreach (var word in words)
        {
            if (piece.StartsWith(word + " ", StringComparison.OrdinalIgnoreCase)) return piece[(word.Length + 1)..].Trim();
        }

        return null;
    }

    /// <summary>A piece that looks like a number with this unit; null when it does not, so that it may be words.</summary>
    public static Outcome<TypedSpread>? Measured(string piece, Unit unit, string where)
    {
        if (piece.Length == 0 || !(char.IsDigit(piece[0]) || piece[0] is '-' or '+' or '−' or '.')) return null;
        var alone = TypedSpread.Read(piece, null, where);
        if (alone.TryValue(out var found)) return found.Unit.Dimension == unit.Dimension ? alone : (Outcome<TypedSpread>?)null;
        // A question about its decimal mark is asked only where the unit says that it is meant.
        var field = TypedSpread.Read(piece, unit, where);
        return piece.EndsWith(unit.Symbol[^1]) || piece.Contains('±', StringComparison.Ordinal) ? field : (Outcome<TypedSpread>?)null;
    }
}
