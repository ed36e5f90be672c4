using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Quantities;
using Lidoff.Numbers.Typed;

namespace Lidoff.Bench.Typing;

/// <summary>One value with its doubt, in the unit in which it is stored.</summary>
/// <param name="Value">The value.</param>
/// <param name="U">Its standard uncertainty; null when none was typed.</param>
public readonly record struct TypedValue(double Value, double? U)
{
    /// <summary>Takes it from what was typed; a range is refused with <paramref name="noRange"/>, which is given what was typed.</summary>
    public static Outcome<TypedValue> Of(TypedSpread typed, Unit unit, Func<string, Fault> noRange)
    {
        Guard.NotNull(typed);
        if (!typed.IsValue) return noRange(typed.Raw.Trim());
        return new TypedValue(Stored(typed.Centre, unit), typed.Shape == SpreadShape.Normal ? Stored(typed.U, unit) : null);
    }

    /// <summary>From SI to a unit. Ten digits behind the point are beyond any instrument; without rounding, 6.1 µA would come back as 6.1000000000000005.</summary>
    public static double Stored(double si, Unit unit) => Math.Round(Guard.NotNull(unit).FromSi(si), 10);
}
