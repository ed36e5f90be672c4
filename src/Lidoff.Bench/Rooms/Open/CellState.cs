using Lidoff.Evidence.Entries;
using Lidoff.Opening.Kinds;

namespace Lidoff.Bench.Rooms.Open;

/// <summary>The cell of a specimen as it was last said to be.</summary>
/// <param name="Specimen">The specimen; empty where none was named.</param>
/// <param name="Spot">Its designator; empty where none was given.</param>
/// <param name="Connected">Whether it is connected; null while nobody said.</param>
/// <param name="Damaged">Whether it is damaged; null while nobody looked.</param>
/// <param name="Volts">Last voltage, in words; empty where none was measured.</param>
/// <param name="Cautions">What it calls for.</param>
public sealed record CellState(string Specimen, string Spot, bool? Connected, bool? Damaged, string Volts, ValueList<string> Cautions)
{
    /// <summary>One for each specimen anybody spoke of a cell of.</summary>
    public static ValueList<CellState> Of(ValueList<Noted<CellSighting>> cells) => [.. cells.GroupBy(each => each.Specimen, StringComparer.Ordinal).Select(group => One(group.Key, [.. group.Select(each => each.Value)]))];

    private static CellState One(string specimen, IReadOnlyList<CellSighting> cells)
    {
        var measured = cells.LastOrDefault(cell => cell.Volts is not null);
        var connected = cells.LastOrDefault(cell => cell.Connected is not null)?.Connected;
        // Cautions of an older reading stay until a newer one of the same sort takes its place.
        var now = new CellSighting("", measured?.Volts, measured?.UV ?? 0, null, "", [], 0, null, connected, cells.LastOrDefault(cell => cell.Damaged is not null)?.Damaged);
        return new(
            specimen,
            cells.Select(cell => cell.Spot).LastOrDefault(spot => spot.Length > 0) ?? "",
            connected,
            now.Damaged,
            measured is null ? "" : Showing.Plain.With(measured.Volts, measured.UV, "V"),
            [.. Opening.Cautioning.Cautions.For(now).Select(caution => caution.Say)]);
    }
}
