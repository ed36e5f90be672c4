using System.Globalization;
using Lidoff.Numbers.Failing;

namespace Lidoff.Telling.Drawing.Labelling;

/// <summary>Round lengths for scale bars: 1, 2 or 5 times a power of ten.</summary>
public static class BarLength
{
    /// <summary>The largest round length that is not longer than <paramref name="most"/>; its steps are at most 2.5, so it is at least 0.4 of it.</summary>
    public static double Of(double most)
    {
        Guard.Positive(most);
        var power = 0;
        while (Ten(power) > most) power--;
        while (Ten(power + 1) <= most) power++;
        return 5 * Ten(power) <= most ? 5 * Ten(power) : 2 * Ten(power) <= most ? 2 * Ten(power) : Ten(power);
    }

    /// <summary>A length of so many mm in words: µm below 1 mm, m from 1 m on.</summary>
    public static string Words(double mm)
    {
        var (value, unit) = mm < 0.9995 ? (mm * 1000, "µm") : mm < 999.5 ? (mm, "mm") : (mm / 1000, "m");
        return value.ToString("0.######", CultureInfo.InvariantCulture) + " " + unit;
    }

    // Read from its digits: products of tens drift in the last bit.
    private static double Ten(int power) => double.Parse("1e" + power.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
