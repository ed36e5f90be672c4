using Lidoff.Numbers;

namespace Lidoff.Naming.Factors;

/// <summary>Keeps a likelihood ratio within what the sighting's blunder rate allows.</summary>
internal static class Blunder
{
    /// <summary>
    /// Natural log of the ratio when the sighting is of something else altogether with probability <paramref name="rate"/>: against, it
    /// never says more than that rate. <paramref name="ratio"/> is the plain likelihood ratio.
    /// </summary>
    internal static double Cap(double ratio, double rate) => Elementary.Log(((1 - rate) * ratio) + rate);
}
