using Lidoff.Evidence.Entries;
using Lidoff.Opening.Kinds;
using Lidoff.Opening.Resuming;

namespace Lidoff.Bench.Rooms.Open;

/// <summary>The cell of a specimen as it was last said to be.</summary>
/// <param name="Specimen">The specimen; empty where none was named.</param>
/// <param name="Spot">Its designator; empty where none was given.</param>
/// <param name="Connected">Whether it is connected; null while nobody said.</param>
/// <param name="Damaged">Whether it is damaged; null while nobody looked.</param>
/// <param name="Since">Words of the step that may have changed it and after which nobody said; empty where there is none.</param>
/// <param name="Say">The same as a sentence.</param>
/// <param name="Volts">Last voltage, in words; empty where none was measured.</param>
/// <param name="Cautions">What it calls for.</param>
public sealed record CellState(string Specimen, string Spot, bool? Connected, bool? Damaged, string Since, string Say, string Volts, ValueList<string> Cautions)
{
    /// <summary>One for each cell of the card.</summary>
    public static ValueList<CellState> Of(ResumeCard card, ValueList<Noted<CellSighting>> cells) =>
        [.. card.Cells.Select(now => One(now, [.. cells.Where(each => each.Specimen == now.Specimen).Select(each => each.Value)]))];

    private static CellState One(CellNow now, IReadOnlyList<CellSighting> cells)
    {
        var measured = cells.LastOrDefault(cell => cell.Volts is not null);
        // Cautions of an older reading stay until a newer one of the same sort takes its place.
        var bites = new CellSighting("", measured?.Volts, measured?.UV ?? 0, null, "", [], 0, null, now.Connected, now.Damaged);
        return new(
            now.Specimen,
            cells.Select(cell => cell.Spot).LastOrDefault(spot => spot.Length > 0) ?? "",
            now.Connected,
            now.Damaged,
            now.Since,
            now.Say,
            measured is null ? "" : Showing.Plain.With(measured.Volts, measured.UV, "V"),
            [.. Opening.Cautioning.Cautions.For(bites).Select(caution => caution.Say)]);
    }
}
