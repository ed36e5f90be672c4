namespace Lidoff.Numbers.Quantities;

/// <summary>Picks the prefix under which a value reads from 1 to below 1000.</summary>
public static class EngineeringUnit
{
    /// <summary>
    /// The unit to show <paramref name="magnitude"/> (SI, zero or more) in. Units that take no prefix (h, °C, mil, %) stay, a
    /// value of zero stays in the unit given, and so do products such as m/s².
    /// </summary>
    public static Unit For(double magnitude, Unit unit)
    {
        if (!(magnitude > 0) || !double.IsFinite(magnitude) || Atom(unit) is not { } atom) return unit;
        var best = unit;
        for (var exponent = -18; exponent <= 15; exponent += 3)
        {
            var candidate = UnitReader.Read(SiPrefix.Symbol(exponent) + atom.Symbol, "").Value;
            // Rounded to four digits first: 0.0009999999 A is 1 mA, not 999.9999 µA.
            if (exponent == -18 || candidate.FromSi(magnitude) >= 0.99995) best = candidate;
        }

        return best;
    }

    private static Unit? Atom(Unit unit)
    {
        foreach (var atom in UnitSymbols.Prefixed.Values)
        {
            if (atom.Dimension != unit.Dimension || !unit.Symbol.EndsWith(atom.Symbol, StringComparison.Ordinal)) continue;
            var prefix = unit.Symbol[..^atom.Symbol.Length];
            if (prefix.Length == 0 || (prefix.Length == 1 && SiPrefix.Exponent(prefix[0]) is not null)) return atom;
        }

        return null;
    }
}
