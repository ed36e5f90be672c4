using System.Globalization;

namespace Lidoff.Bench.Showing;

/// <summary>Lengths of files in words.</summary>
internal static class Sizes
{
    /// <summary>Powers of 1,000 with SI prefixes, as disks and cameras count.</summary>
    public static string Bytes(long bytes)
    {
        string[] units = ["bytes", "kB", "MB", "GB", "TB"];
        double value = bytes;
        var unit = 0;
        while (value >= 999.5 && unit < units.Length - 1) (value, unit) = (value / 1000, unit + 1);
        var format = unit == 0 || value >= 99.5 ? "0" : value >= 9.95 ? "0.0" : "0.00";
        return value.ToString(format, CultureInfo.InvariantCulture) + " " + units[unit];
    }
}
