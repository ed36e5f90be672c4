using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Numbers.Failing;
using Lidoff.Opening.Kinds;

namespace Lidoff.Opening.Resuming;

/// <summary>
/// The list to go through before the bench is left. What was ticked on leaving counts until the next step is noted: whoever works
/// on has a warm iron again.
/// </summary>
public static class ClosingList
{
    /// <summary>Every item with its tick, in the order of <see cref="ClosingItems.All"/>.</summary>
    public static ValueList<ClosingTick> Of(IDossierView view)
    {
        Guard.NotNull(view);
        var first = new FirstOfChain(view);
        var step = first.Last(view.Live<StepSighting>());
        var left = first.Last(view.Live<BenchLeft>());
        var pause = left is not null && (step is null || first.Place(step.Id) < first.Place(left.Id)) ? left.Value : null;
        var cells = ResumeCard.Of(view).Cells;
        return [.. ClosingItems.All.Select(item => Tick(item, pause, cells))];
    }

    private static ClosingTick Tick(ClosingItem item, BenchLeft? pause, ValueList<CellNow> cells)
    {
        // The item is also ticked by whoever says on leaving why the cell stays connected.
        var connected = cells.FirstOrDefault(cell => cell.Connected == true);
        if (item.Key == ClosingItems.CellDisconnected && connected is not null && pause?.Checked.Contains(item.Key, StringComparer.Ordinal) != true) return new(item, false, connected.Say);
        if (item.Key == ClosingItems.CellDisconnected && cells.All(cell => cell.Connected == false)) return new(item, true, string.Join(" ", cells.Select(cell => cell.Say)));
        if (pause is null) return new(item, false, "");
        if (item.Key == ClosingItems.InHandNoted && (pause.InHand.Length > 0 || pause.Next.Length > 0)) return new(item, true, "noted on leaving");
        return pause.Checked.Contains(item.Key, StringComparer.Ordinal) ? new(item, true, "ticked on leaving") : new(item, false, "");
    }
}
