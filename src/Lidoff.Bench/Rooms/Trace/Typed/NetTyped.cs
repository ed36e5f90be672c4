using Lidoff.Bench.Working;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Bench.Rooms.Trace.Typed;

/// <summary>A net drawn by hand, typed on one line: <c>VSYS: U3.5 C4.1 U2.3 because the track is seen</c>.</summary>
/// <param name="Net">Its name.</param>
/// <param name="Points">The points on it, each once.</param>
/// <param name="Why">The reason; empty when not typed.</param>
public sealed record NetTyped(string Net, ValueList<string> Points, string Why)
{
    /// <summary>Reads the line.</summary>
    public static Outcome<NetTyped> Read(string? text)
    {
        var (line, why) = Reason.Of(text);
        var at = line.IndexOfAny([':', '=']);
        var words = at < 0 ? Reason.Words(line) : [line[..at].Trim(), .. Reason.Words(line[(at + 1)..])];
        if (words.Count == 0 || words[0].Length == 0) return TraceSentences.NoNet;
        return words.Count == 1 ? TraceSentences.NoPoints(words[0]) : new NetTyped(words[0], [.. words.Skip(1).Distinct(StringComparer.Ordinal)], why);
    }

    /// <summary>The line to store.</summary>
    public Line Line() => Working.Line.Of("net").Set("net", Net).Set("points", Points).Set("why", Why);
}
