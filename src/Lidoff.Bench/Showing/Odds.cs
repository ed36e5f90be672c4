using System.Globalization;

namespace Lidoff.Bench.Showing;

/// <summary>Probabilities in print.</summary>
internal static class Odds
{
    /// <summary>Two digits, and never a flat 0 or 1: no evidence makes a thing certain.</summary>
    public static string P(double p) => p switch
    {
        < 0.005 => "< 0.01",
        > 0.995 => "> 0.99",
        _ => p.ToString("0.00", CultureInfo.InvariantCulture),
    };

    /// <summary>Decibans with their sign, a true minus.</summary>
    public static string Decibans(double db) => (db < 0 ? "−" : "+") + Math.Abs(db).ToString("0.0", CultureInfo.InvariantCulture);

    /// <summary>For attributes that a browser reads as a number.</summary>
    public static string Number(double p) => p.ToString("0.####", CultureInfo.InvariantCulture);
}
