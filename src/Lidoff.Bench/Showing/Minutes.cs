using System.Globalization;

namespace Lidoff.Bench.Showing;

/// <summary>Times of bench work in words.</summary>
internal static class Minutes
{
    /// <summary>"12 min", "2 h 5 min"; empty for none.</summary>
    public static string Of(double? minutes)
    {
        if (minutes is not { } m) return "";
        if (m < 60) return Plain.Number(m) + " min";
        var hours = Math.Floor(m / 60);
        var rest = Math.Round(m - (60 * hours));
        return rest == 0 ? string.Create(CultureInfo.InvariantCulture, $"{hours:0} h") : string.Create(CultureInfo.InvariantCulture, $"{hours:0} h {rest:0} min");
    }
}
