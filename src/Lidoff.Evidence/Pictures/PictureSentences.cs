using System.Globalization;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Pictures;

/// <summary>The sentences users see when points do not make a map.</summary>
internal static class PictureSentences
{
    public static Fault TooFew(int given, int needed, string map) => new(
        "points", N(needed) + " points or more",
        "A " + map + " needs at least " + N(needed) + " points seen in both, and " + N(given) + (given == 1 ? " was" : " were") + " given.");

    public static Fault OnOneLine(string which, string map) => new(
        "points", "points that do not lie on one line",
        "The points " + which + " lie on one line, so they do not fix a " + map + "; add one well off that line.");

    public static Fault SamePlace(int a, int b) => new(
        "points", "points at different places",
        "Points " + N(a) + " and " + N(b) + " stand at the same place; each point must be a place of its own.");

    public static Fault NotFinite(int point) => new(
        "point " + N(point), "finite coordinates", "Point " + N(point) + " has a coordinate that is not a number.");

    public static Fault Crossed { get; } = new(
        "points", "the same order in both",
        "No view of a flat thing can show these points so; give them in the same order in both (around the outline, not across it).");

    private static string N(int n) => n.ToString(CultureInfo.InvariantCulture);
}
