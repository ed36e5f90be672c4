namespace Lidoff.Catalogue.Joining;

/// <summary>
/// The coarse classes that priors go by, and how the sources' many class words map to them. The first rule with a word that
/// occurs in the class word wins, so special words stand before general ones. Common practice, no source.
/// </summary>
public static class KindWords
{
    private static readonly (string Kind, string[] Words)[] Rules =
    [
        ("radio SoC", ["radio soc"]),
        ("module", ["module"]),
        ("battery protection", ["battery protection", "battery authentication"]),
        ("fuel gauge", ["fuel gauge"]),
        ("charger", ["charger"]),
        ("radio SoC", ["ble", "bt audio", "wi-fi", "uwb"]),
        ("application processor", ["watch soc", "application processor"]),
        ("radio", ["rf", "gnss lna"]),
        ("GNSS", ["gnss"]),
        ("NFC", ["nfc"]),
        ("memory", ["flash", "eeprom", "fram", "mram", "psram", "ram", "emmc"]),
        ("microcontroller", ["mcu"]),
        ("motion sensor", ["accelerometer", "imu", "gyroscope", "motion sensor"]),
        ("bio front end", ["heart-rate", "biopotential", "bio front end"]),
        ("touch controller", ["touch", "capacitance converter", "keypad"]),
        ("magnetic sensor", ["magnet", "hall"]),
        ("optical sensor", ["light", "uv", "optical", "proximity", "gesture", "spectral", "finger navigation"]),
        ("audio", ["audio", "codec"]),
        ("microphone", ["microphone"]),
        ("LED driver", ["led driver"]),
        ("haptic driver", ["haptic"]),
        ("monitor", ["monitor", "current-sense", "energy"]),
        ("environment sensor", ["pressure", "humidity", "temperature", "gas/", "gas sensor"]),
        ("display driver", ["display", "lcd", "segment"]),
        ("power management", ["pmic", "power management", "battery management"]),
        ("load switch", ["load switch", "power switch", "power mux", "efuse", "power protection"]),
        ("regulator", ["ldo", "regulator", "buck", "boost", "dc/dc", "charge pump", "voltage reference"]),
        ("supervisor", ["supervisor"]),
        ("clock", ["rtc", "real-time clock", "oscillator", "timer", "pll", "crystal"]),
        ("secure element", ["secure element", "unique id"]),
        ("USB", ["usb"]),
        ("logic", ["logic", "level shifter", "buffer", "analog switch", "i2c switch"]),
        ("I/O expander", ["i/o expander"]),
        ("converter", ["adc", "dac", "potentiometer"]),
        ("amplifier", ["op amp", "amp", "comparator"]),
        ("discrete", ["mosfet", "bjt", "npn", "pnp", "diode", "zener", "schottky", "tvs", "esd", "transistor", "led"]),
        ("interface", ["interface", "uart", "can"]),
        ("motor driver", ["motor driver"]),
        ("filter", ["filter"]),
        ("sensor", ["sensor"]),
    ];

    /// <summary>Every coarse class there is.</summary>
    public static IReadOnlyList<string> Kinds { get; } = [.. Rules.Select(r => r.Kind).Distinct(StringComparer.Ordinal)];

    /// <summary>The coarse class of a class word, empty when no rule knows it.</summary>
    public static string Of(string word)
    {
        if (word.Length == 0) return "";
        foreach (var (kind, words) in Rules)
        {
            foreach (var piece in words)
            {
                if (Occurs(piece, word)) return kind;
            }
        }

        return "";
    }

    // A piece starts where a word starts ("light" is not in "backlight"); short ones must be whole words ("ble" is not in "configurable").
    private static bool Occurs(string piece, string word)
    {
        for (var at = word.IndexOf(piece, StringComparison.OrdinalIgnoreCase); at >= 0; at = word.IndexOf(piece, at + 1, StringComparison.OrdinalIgnoreCase))
        {
            var end = at + piece.Length;
            if (at > 0 && char.IsAsciiLetter(word[at - 1])) continue;
            if (piece.Length <= 4 && end < word.Length && char.IsAsciiLetter(word[end])) continue;
            return true;
        }

        return false;
    }
}
