using Lidoff.Bench.Rooms.Trace.Book;
using Lidoff.Bench.Showing;
using Lidoff.Tracing.Kinds;

namespace Lidoff.Bench.Rooms.Trace;

/// <summary>What a touch showed, in words and as a stroke.</summary>
internal static class Readings
{
    /// <summary>"beep", "no beep", "open", "2,200 Ω", "1.8 ± 0.1 V", or several of them.</summary>
    public static string Words(TouchSighting touch)
    {
        var words = new List<string>();
        if (touch.Beep is { } beep) words.Add((beep ? "beep" : "no beep") + (touch.ThresholdOhm is { } below ? $" (below {Plain.Number(below)} Ω)" : ""));
        if (touch.Open) words.Add("open");
        if (touch.Ohms is { } ohms) words.Add(Ohms(ohms, touch.UOhm));
        if (touch.Volts is not null) words.Add(Plain.With(touch.Volts, touch.UV, "V"));
        return string.Join(", ", words);
    }

    /// <summary>The same without the meter's threshold, for the drawing.</summary>
    public static string Short(TouchSighting touch) => Words(touch with { ThresholdOhm = null });

    /// <summary>Its stroke: what says most of whether the points are one.</summary>
    public static StringKind Kind(TouchSighting touch) =>
        touch.Open || touch.Beep == false ? StringKind.Open : touch.Beep == true ? StringKind.Beep : touch.Ohms is not null ? StringKind.Ohms : StringKind.Volts;

    private static string Ohms(double ohms, double? u) => ohms switch
    {
        >= 1e6 => Plain.With(ohms / 1e6, u / 1e6, "MΩ"),
        >= 1e3 => Plain.With(ohms / 1e3, u / 1e3, "kΩ"),
        _ => Plain.With(ohms, u, "Ω"),
    };
}
