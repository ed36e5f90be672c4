namespace Lidoff.Reckoning.Lines;

/// <summary>Complete elliptic integrals through the arithmetic-geometric mean: K(k) is pi / (2 mean(1, k')).</summary>
internal static class Elliptic
{
    // A round halves the exponent between the two means, then doubles the digits that are right: enough from 1e-130 on.
    private const int Rounds = 14;

    /// <summary>The arithmetic-geometric mean of 1 and <paramref name="k"/>, k above zero.</summary>
    public static T Mean<T>(T k)
        where T : struct, IReal<T>
    {
        T arithmetic = 1, geometric = k;
        for (var i = 0; i < Rounds; i++)
        {
            var next = (arithmetic + geometric) * 0.5;
            geometric = T.Sqrt(arithmetic * geometric);
            arithmetic = next;
        }

        return arithmetic;
    }
}
