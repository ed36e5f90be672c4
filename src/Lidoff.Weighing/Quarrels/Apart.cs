namespace Lidoff.Weighing.Quarrels;

/// <summary>Values whose difference is beyond what their doubts allow.</summary>
internal static class Apart
{
    // Four standard uncertainties of the difference: chance does that once in 15,800 (tables of the standard normal distribution).
    private const double Beyond = 4;

    /// <summary>True when both cannot be one value.</summary>
    public static bool Of(double a, double uA, double b, double uB) => Math.Abs(a - b) > Beyond * Math.Sqrt((uA * uA) + (uB * uB));

    // Who reads one thing more often keeps a log: the newest readings are held against each other, and the drawer stays readable.
    private const int Most = 12;

    /// <summary>Every pair of the newest of a list, the earlier one first.</summary>
    public static IEnumerable<(T First, T Second)> Pairs<T>(IReadOnlyList<T> all)
    {
        IReadOnlyList<T> newest = [.. all.TakeLast(Most)];
        return newest.SelectMany((first, i) => newest.Skip(i + 1).Select(second => (first, second)));
    }
}
