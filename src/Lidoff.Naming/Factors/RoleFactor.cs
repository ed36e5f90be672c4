using Lidoff.Naming.Asking;
using Lidoff.Naming.Knowing;
using Lidoff.Numbers;

namespace Lidoff.Naming.Factors;

/// <summary>Words about what stands around the part: weak evidence, at most a factor of eight whatever is written.</summary>
public sealed class RoleFactor : ILikelihoodFactor
{
    // Which neighbours speak for which kinds, and how loudly. Common practice, no source.
    private static readonly (string Word, double Times, string[] Groups)[] Words =
    [
        ("antenna", 4, ["radio", "nfc", "gnss"]), ("32 mhz", 4, ["radio"]), ("16 mhz", 2, ["radio", "mcu"]), ("crystal", 2, ["radio", "mcu", "clock"]),
        ("32.768", 2, ["radio", "mcu", "clock"]), ("32 khz", 2, ["radio", "mcu", "clock"]), ("inductor", 3, ["converter", "charger"]), ("coil", 2, ["nfc", "converter", "charger"]),
        ("battery", 3, ["charger", "gauge", "protection"]), ("cell", 3, ["charger", "gauge", "protection"]), ("usb", 2, ["charger", "protection", "interface"]),
        ("speaker", 4, ["audio"]), ("microphone", 3, ["audio"]), ("sound hole", 5, ["audio"]), ("led", 2, ["optical", "led"]), ("photodiode", 5, ["optical"]), ("window", 3, ["optical", "environment"]),
        ("skin", 3, ["optical", "biosignal"]), ("electrode", 4, ["biosignal", "touch"]), ("motor", 5, ["haptic"]), ("vibrat", 5, ["haptic"]), ("display", 2, ["display", "touch", "converter"]),
        ("touch", 3, ["touch"]), ("button", 2, ["touch", "switch"]), ("vent", 4, ["environment"]), ("hole in the lid", 4, ["environment", "audio"]), ("magnet", 3, ["magnetic"]),
        ("sense resistor", 5, ["gauge", "protection"]), ("flash", 3, ["memory"]), ("spi", 1.5, ["memory", "motion"]), ("i2c", 1.5, ["motion", "environment", "optical", "gauge", "touch"]),
        ("connector", 2, ["protection"]), ("regulator", 3, ["converter"]), ("sensor", 2, ["motion", "environment", "optical", "magnetic", "sensor"]),
    ];

    private const double Most = 8;

    /// <inheritdoc/>
    public string Evidence => "role";

    /// <inheritdoc/>
    public int Order => 120;

    /// <inheritdoc/>
    public double BlunderRate => 0.2;

    /// <inheritdoc/>
    public bool Speaks(NameEvidence evidence) => evidence.Role is not null;

    /// <inheritdoc/>
    public IFactorReading Read(FactorQuestion question)
    {
        var lower = question.Evidence.Role!.ToLowerInvariant();
        var heard = Words.Where(w => ClassGroups.HasWord(lower, w.Word)).ToArray();
        var times = ClassGroups.All.Select(g => Math.Min(Most, heard.Where(w => w.Groups.Contains(g.Name, StringComparer.Ordinal)).Aggregate(1.0, (t, w) => t * w.Times))).ToArray();
        var shares = ClassGroups.All.Sum(g => g.Share);
        var mean = ClassGroups.All.Select((g, i) => g.Share / shares * times[i]).Sum();
        var logs = times.Select(t => Elementary.Log(((1 - BlunderRate) * t / mean) + BlunderRate)).ToArray();
        return new GroupReading(question, logs, index => FactorSentences.Role([.. heard.Select(w => w.Word)], ClassGroups.All[question.Catalogue.GroupOf[index]].Name, logs[question.Catalogue.GroupOf[index]] > 0.01));
    }
}
