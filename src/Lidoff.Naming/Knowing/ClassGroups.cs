using Lidoff.Numbers.Failing;

namespace Lidoff.Naming.Knowing;

/// <summary>The coarse kinds of part, and which words of a class or of a person's note point at which.</summary>
public static class ClassGroups
{
    /// <summary>Resistors, capacitors, coils: parts that carry a value instead of a number.</summary>
    public static ClassGroup Passive { get; } = new("passive", 0.5, 0.01);

    private static readonly (ClassGroup Group, string[] Words)[] Table =
    [
        // Named by value, hardly ever by a list: what is taken for one is not compared with chips.
        (Passive, ["resistor", "capacitor", "inductor", "ferrite", "passive", "fuse", "thermistor", "varistor"]),
        (new("gauge", 2, 0.75), ["gauge", "battery monitor"]),
        (new("charger", 5, 0.65), ["charger", "power path", "pmic", "power management", "pmu"]),
        (new("protection", 4, 0.45), ["protection", "esd", "tvs", "supervisor", "reset", "authentication"]),
        (new("optical", 6, 0.75), ["heart", "spo2", "optical", "light", "proximity", "colour", "color", "photo", "afe for ppg"]),
        (new("touch", 4, 0.6), ["touch", "sar", "capacitive", "keypad"]),
        (new("haptic", 2, 0.7), ["haptic", "vibrat", "motor"]),
        (new("motion", 8, 0.72), ["accelero", "imu", "gyro", "inertial", "motion", "6-axis", "9-axis"]),
        (new("magnetic", 3, 0.65), ["magneto", "hall", "compass", "magnetic"]),
        (new("gnss", 2, 0.65), ["gnss", "gps"]),
        (new("nfc", 2, 0.65), ["nfc", "rfid", "secure element"]),
        (new("radio", 12, 0.8), ["radio", "ble", "bluetooth", "bt audio", "wi-fi", "wifi", "rf", "uwb", "cellular", "2.4 ghz", "zigbee", "lora", "transceiver", "soc", "combo", "modem"]),
        (new("memory", 6, 0.75), ["flash", "memory", "eeprom", "fram", "psram", "sram", "emmc", "ram"]),
        (new("display", 3, 0.5), ["display", "lcd", "epaper", "e-paper", "oled", "segment"]),
        (new("audio", 5, 0.65), ["audio", "codec", "microphone", "speaker"]),
        (new("clock", 3, 0.65), ["rtc", "clock", "oscillator", "timer", "crystal"]),
        (new("environment", 4, 0.7), ["pressure", "humidity", "temperature", "gas", "air", "environment", "thermal", "altitude"]),
        (new("led", 2, 0.5), ["led driver", "led"]),
        (new("converter", 8, 0.5), ["ldo", "regulator", "buck", "boost", "dc/dc", "dc-dc", "converter", "reference", "switch mode", "linear"]),
        (new("switch", 4, 0.45), ["load switch", "level shifter", "analog switch", "switch", "mux", "translator"]),
        (new("biosignal", 2, 0.65), ["biopotential", "ecg", "bioz", "electrode"]),
        (new("discrete", 8, 0.3), ["mosfet", "diode", "transistor", "schottky", "zener", "npn", "pnp", "rectifier", "igbt", "bjt", "jfet"]),
        (new("logic", 3, 0.5), ["logic", "gate", "flip-flop", "buffer", "inverter", "74", "4000", "expander"]),
        (new("analog", 4, 0.45), ["op amp", "opamp", "amplifier", "comparator", "adc", "dac", "analog", "sensor interface", "current sense"]),
        (new("mcu", 8, 0.7), ["mcu", "microcontroller", "processor", "cpu", "fpga", "dsp", "controller"]),
        (new("interface", 2, 0.45), ["interface", "usb", "uart", "driver", "bridge"]),
        (new("sensor", 2, 0.6), ["sensor"]),
    ];

    /// <summary>Where no word fits.</summary>
    public static ClassGroup Other { get; } = new("other", 2, 0.3);

    /// <summary>All groups, <see cref="Other"/> last.</summary>
    public static IReadOnlyList<ClassGroup> All { get; } = [.. Table.Select(t => t.Group), Other];

    /// <summary>The group a class text belongs to: the first whose word stands in it, more special groups first.</summary>
    public static ClassGroup Of(string text)
    {
        var lower = Guard.NotNull(text).ToLowerInvariant();
        foreach (var (group, words) in Table)
        {
            if (Array.Exists(words, w => HasWord(lower, w))) return group;
        }
        return Other;
    }

    /// <summary>
    /// The group of what a person takes a spot for. A crystal or resonator is named by the frequency that is printed on it, as a resistor by its
    /// value (common practice, no source), and not compared with the clocks that are named like it.
    /// </summary>
    public static ClassGroup OfSpot(string kind) => Guard.NotNull(kind).Trim().ToLowerInvariant() is "crystal" or "resonator" ? Passive : Of(kind);

    /// <summary>
    /// True for what no list of parts names: a cell or a pack bears its maker's type and its ratings (IEC 61960-3, from memory), which say
    /// nothing of a semiconductor.
    /// </summary>
    public static bool IsUnlisted(string? kind) => kind?.Trim().ToLowerInvariant() is "cell" or "battery" or "pack" or "battery pack";

    /// <summary>Place of a group in <see cref="All"/>.</summary>
    internal static int IndexOf(ClassGroup group)
    {
        for (var i = 0; i < All.Count; i++)
        {
            if (All[i] == group) return i;
        }
        return All.Count - 1;
    }

    /// <summary>A word stands at the start of a word of the text; short ones must be whole words ("ram" is not in "frame").</summary>
    internal static bool HasWord(string lower, string word)
    {
        for (var at = lower.IndexOf(word, StringComparison.Ordinal); at >= 0; at = lower.IndexOf(word, at + 1, StringComparison.Ordinal))
        {
            if (at > 0 && char.IsLetterOrDigit(lower[at - 1])) continue;
            var end = at + word.Length;
            if (word.Length > 4 || end == lower.Length || !char.IsLetterOrDigit(lower[end]) || (lower[end] == 's' && (end + 1 == lower.Length || !char.IsLetterOrDigit(lower[end + 1])))) return true;
        }
        return false;
    }
}
