using System.Globalization;
using System.Text;

namespace Lidoff.Demo;

/// <summary>
/// The recorder of the supply current: 30 s at 500 samples a second over sleep, a radio beacon each second, barks, and the lamp.
/// Levels are those of the demo's states; noise is seeded. Time in seconds, current in amperes.
/// </summary>
internal static class DemoCurrent
{
    public const string Name = "brindle-current.csv";

    /// <summary>Seconds at which the dog barks.</summary>
    public static IReadOnlyList<double> Barks { get; } = [4.3, 4.9, 5.4, 12.7, 21.2];

    /// <summary>When the lamp is on, s.</summary>
    public const double LampFrom = 15, LampTo = 20;

    private const int Rate = 500, Samples = 30 * Rate;
    private const double SleepA = 6.1e-6, BeaconA = 5.2e-3, BarkA = 3.4e-3, LampA = 2.4e-3, NoiseA = 4e-7;

    /// <summary>The file's text.</summary>
    public static string Text()
    {
        var text = new StringBuilder("# Invented: recorded by Lidoff's own seeded recorder for the invented device Brindle; no real product.\nt_s,i_a\n");
        for (var i = 0; i < Samples; i++)
        {
            var t = (double)i / Rate;
            var amps = Level(t) * (1 + (0.01 * DemoHand.Normal((ulong)((2 * i) + 1)))) + (NoiseA * DemoHand.Normal((ulong)((2 * i) + 2)));
            text.Append(CultureInfo.InvariantCulture, $"{t:0.000},{amps:0.00000000}\n");
        }

        return text.ToString();
    }

    private static double Level(double t)
    {
        if (Barks.Any(bark => t >= bark && t < bark + 0.12)) return BarkA;
        if (t - Math.Floor(t) is >= 0.5 and < 0.506) return BeaconA;
        return t is >= LampFrom and < LampTo ? LampA : SleepA;
    }
}
