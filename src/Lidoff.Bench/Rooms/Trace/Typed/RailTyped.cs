using Lidoff.Bench.Showing;
using Lidoff.Bench.Typing;
using Lidoff.Bench.Working;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Quantities;
using Lidoff.Numbers.Typed;
using Lidoff.Tracing.Kinds;

namespace Lidoff.Bench.Rooms.Trace.Typed;

/// <summary>A rail typed on one line: <c>VSYS 3.7 V ± 0.02 from U4 to U1 U2 net VSYS because measured at C4</c>; all but the name may be left out.</summary>
/// <param name="Rail">Its name.</param>
/// <param name="V">Voltage, V.</param>
/// <param name="UV">Its standard uncertainty, V.</param>
/// <param name="From">The spot that makes it; empty when not typed.</param>
/// <param name="To">The spots that it feeds.</param>
/// <param name="Net">The net it is; empty when not typed.</param>
/// <param name="Why">The reason; empty when not typed.</param>
public sealed record RailTyped(string Rail, double? V, double? UV, string From, ValueList<string> To, string Net, string Why)
{
    private static readonly string[] Parts = ["from", "to", "net"];

    /// <summary>Reads the line; all faults at once.</summary>
    public static Outcome<RailTyped> Read(string? text)
    {
        var (line, why) = Reason.Of(text);
        var words = line.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 0 || Parts.Contains(words[0], StringComparer.OrdinalIgnoreCase)) return TraceSentences.NoRail;
        var parts = new Dictionary<string, List<string>>(StringComparer.Ordinal) { [""] = [] };
        var part = "";
        foreach (var word in words.Skip(1))
        {
            if (Parts.Contains(word, StringComparer.OrdinalIgnoreCase)) parts.TryAdd(part = word.ToLowerInvariant(), []);
            else parts[part].Add(word);
        }

        var faults = new List<Fault>();
        double? v = null, u = null;
        var volts = string.Join(' ', parts[""]);
        if (volts.Length > 0)
        {
            var read = TypedSpread.Read(volts, Units.Volt, "v").Then(typed => TypedValue.Of(typed, Units.Volt, TraceSentences.ReadingIsNoRange));
            if (read.TryValue(out var typed)) (v, u) = (typed.Value, typed.U);
            else faults.AddRange(read.Faults);
        }

        foreach (var one in new[] { "from", "net" })
        {
            if (parts.TryGetValue(one, out var names) && names.Count != 1) faults.Add(TraceSentences.OneBehind(one));
        }

        if (faults.Count > 0) return Outcome<RailTyped>.Failed(faults);
        var to = parts.GetValueOrDefault("to", []).SelectMany(Reason.Words).Distinct(StringComparer.Ordinal);
        return new RailTyped(words[0].TrimEnd(':', ','), v, u, First(parts, "from"), [.. to], First(parts, "net"), why);
    }

    /// <summary>The line to store.</summary>
    public Line Line() => Working.Line.Of("rail").Set("rail", Rail).Set("v", V).Set("u_v", UV).Set("from", From).Set("to", To).Set("net", Net).Set("why", Why);

    /// <summary>A stored rail as it would be typed.</summary>
    public static string Typed(RailDrawn of) => string.Join(' ', new[]
    {
        of.Rail,
        of.V is null ? "" : Plain.Typed(of.V) + " V" + (of.UV is { } u ? " ± " + Plain.Typed(u) : ""),
        of.From.Length > 0 ? "from " + of.From : "",
        of.To.Count > 0 ? "to " + string.Join(' ', of.To) : "",
        of.Net.Length > 0 ? "net " + of.Net : "",
        of.Why.Length > 0 ? "because " + of.Why : "",
    }.Where(part => part.Length > 0));

    private static string First(Dictionary<string, List<string>> parts, string part) => parts.TryGetValue(part, out var names) ? names[0].Trim(',', ';') : "";
}
