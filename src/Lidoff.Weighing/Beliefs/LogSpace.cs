using Lidoff.Numbers;

namespace Lidoff.Weighing.Beliefs;

/// <summary>Sums and shares of numbers kept as natural logs.</summary>
internal static class LogSpace
{
    /// <summary>ln(e^a + e^b).</summary>
    internal static double Add(double a, double b)
    {
        var (most, least) = a >= b ? (a, b) : (b, a);
        return double.IsNegativeInfinity(most) ? most : most + Elementary.Log(1 + Elementary.Exp(least - most));
    }

    /// <summary>Moves logs so that their exponentials add up to 1; all impossible becomes all alike.</summary>
    internal static void Normalise(double[] logs)
    {
        var most = logs.Max();
        if (double.IsNegativeInfinity(most))
        {
            Array.Fill(logs, -Elementary.Log(logs.Length));
            return;
        }
        var sum = 0.0;
        foreach (var log in logs) sum += Elementary.Exp(log - most);
        var all = most + Elementary.Log(sum);
        for (var i = 0; i < logs.Length; i++) logs[i] -= all;
    }

    /// <summary>Probabilities of normalised logs.</summary>
    internal static double[] Shares(double[] logs)
    {
        Normalise(logs);
        return [.. logs.Select(Elementary.Exp)];
    }
}
