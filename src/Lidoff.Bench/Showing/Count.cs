using System.Globalization;

namespace Lidoff.Bench.Showing;

/// <summary>Counts in words.</summary>
internal static class Count
{
    /// <summary>"1 step", "3 steps", "2 touches" with its own plural.</summary>
    public static string Of(int number, string one, string? many = null) =>
        number.ToString("N0", CultureInfo.InvariantCulture) + " " + (number == 1 ? one : many ?? one + "s");
}
