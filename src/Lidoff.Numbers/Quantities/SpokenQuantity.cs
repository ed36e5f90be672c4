namespace Lidoff.Numbers.Quantities;

/// <summary>
/// Quantities as <see cref="QuantityText"/> writes them, with durations beyond two days once more in brackets, in the unit people think of
/// them in: <c>26100 ± 2500 h (2.98 ± 0.29 years)</c>. For sentences and tables that are read and not typed back.
/// </summary>
public static class SpokenQuantity
{
    // Where people stop thinking in hours, in days and in months: common practice, no source. A year is the Julian one of 365.25 days.
    private const double TwoDays = 2 * 86400;
    private const double SixtyDays = 60 * 86400;
    private const double TwoYears = 2 * 365.25 * 86400;

    private static readonly Unit Days = new("days", Dimensions.Time, 86400);
    private static readonly Unit Months = new("months", Dimensions.Time, 365.25 * 86400 / 12);
    private static readonly Unit Years = new("years", Dimensions.Time, 365.25 * 86400);

    /// <summary>A value with its standard uncertainty, both in SI; an uncertainty of zero writes the value alone, to four digits.</summary>
    public static string Of(double si, double u, Unit unit, bool keepUnit = false) => u > 0
        ? QuantityText.WithUncertainty(si, u, unit, keepUnit) + Beside(si, unit, calendar => QuantityText.WithUncertainty(si, u, calendar, keepUnit: true))
        : QuantityText.Value(si, unit, keepUnit: keepUnit) + Beside(si, unit, calendar => QuantityText.Value(si, calendar, 3, keepUnit: true));

    /// <summary>An interval from low to high, both in SI.</summary>
    public static string Interval(double low, double high, Unit unit, bool keepUnit = false) =>
        QuantityText.Interval(low, high, unit, keepUnit) + Beside(Math.Max(Math.Abs(low), Math.Abs(high)), unit, calendar => QuantityText.Interval(low, high, calendar, keepUnit: true));

    private static string Beside(double si, Unit unit, Func<Unit, string> written)
    {
        if (unit.Dimension != Dimensions.Time || !(Math.Abs(si) > TwoDays)) return "";
        var calendar = Math.Abs(si) < SixtyDays ? Days : Math.Abs(si) < TwoYears ? Months : Years;
        return calendar.Factor == unit.Factor ? "" : $" ({written(calendar)})";
    }
}
