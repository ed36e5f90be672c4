namespace Lidoff.Reckoning;

/// <summary>Writes an input of a calculation down in the unit people give it in.</summary>
internal static class Given
{
    /// <summary>An input whose range and default are in <paramref name="unit"/>.</summary>
    public static CalculationInput Of(string key, Unit unit, double least, double most, string says, double? assumed = null) =>
        new(key, unit, unit.ToSi(least), unit.ToSi(most), says, assumed is { } value ? unit.ToSi(value) : null);
}
