namespace Lidoff.Naming.Ranking;

/// <summary>Rounds shares that add up to 1 to millionths that add up to 1 as well: what is left over goes to the largest remainders.</summary>
internal static class Millionths
{
    private const int All = 1_000_000;

    internal static double[] Of(double[] shares)
    {
        var units = shares.Select(s => (int)Math.Floor(s * All)).ToArray();
        var left = All - units.Sum();
        foreach (var i in Enumerable.Range(0, shares.Length).OrderByDescending(i => (shares[i] * All) - units[i]).ThenBy(i => i).Take(Math.Max(0, left))) units[i]++;
        return [.. units.Select(u => (double)u / All)];
    }
}
