using System.Globalization;
using Lidoff.Numbers.Quantities;

namespace Lidoff.Numbers.Typed.Codes;

/// <summary>A tolerance as a letter or a colour tells it: how far below and above, both zero or more, in per cent, picofarad or nanohenry.</summary>
public sealed record Tolerance(double Below, double Above, Unit Unit)
{
    /// <summary>As far below as above, in per cent.</summary>
    public static Tolerance Percent(double percent) => new(percent, percent, Units.Percent);

    /// <inheritdoc/>
    public override string ToString() => Below == Above
        ? string.Create(CultureInfo.InvariantCulture, $"± {Above:0.###} {Unit.Symbol}")
        : string.Create(CultureInfo.InvariantCulture, $"−{Below:0.###}/+{Above:0.###} {Unit.Symbol}");
}
