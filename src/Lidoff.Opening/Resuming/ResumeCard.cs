using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Numbers.Failing;
using Lidoff.Opening.Kinds;

namespace Lidoff.Opening.Resuming;

/// <summary>
/// What to know on coming back to the bench. It holds the times of entries and no clock: how long ago that is, its reader works out.
/// </summary>
/// <param name="Cells">Each specimen's cell, specimens in natural order; never empty.</param>
/// <param name="InHand">What was in hand; null before anything was done.</param>
/// <param name="Irreversible">The next planned step that destroys something; null where none is planned.</param>
/// <param name="IrreversibleSays">The same as a sentence; empty where none is planned.</param>
public sealed record ResumeCard(ValueList<CellNow> Cells, InHand? InHand, PlannedStep? Irreversible, string IrreversibleSays)
{
    /// <summary>The card of a dossier. <paramref name="known"/> tells whether a reference to be recorded first has a value.</summary>
    public static ResumeCard Of(IDossierView view, Func<string, bool>? known = null)
    {
        Guard.NotNull(view);
        var open = PlanBook.Of(view, known).Where(step => step.State != PlanState.Done && step.Plan.Irreversible).ToList();
        var next = open.FirstOrDefault(step => step.State == PlanState.Open) ?? open.FirstOrDefault();
        return new(Cell(view), Hand(view), next, next is null ? "" : ResumeSentences.Irreversible(next));
    }

    private static ValueList<CellNow> Cell(IDossierView view)
    {
        var cells = view.Live<CellSighting>();
        var specimens = view.Live<SpecimenSighting>().Select(each => each.Value.Specimen).Concat(cells.Select(each => each.Specimen))
            .Distinct(StringComparer.Ordinal).Order(NaturalOrder.Instance).ToList();
        if (specimens.Count == 0) specimens.Add("");
        return [.. specimens.Select(specimen => Cell(specimen, cells.Where(each => each.Specimen == specimen).ToList()))];
    }

    private static CellNow Cell(string specimen, List<Sighting<CellSighting>> cells)
    {
        var newest = cells.LastOrDefault(each => each.Value.Connected is not null);
        var connected = newest?.Value.Connected;
        var damaged = cells.Select(each => each.Value.Damaged).LastOrDefault(each => each is not null);
        return new(specimen, connected, damaged, ResumeSentences.Cell(specimen, connected, damaged), newest?.Id, newest?.Entry.At);
    }

    private static InHand? Hand(IDossierView view)
    {
        var pause = view.Live<BenchLeft>().Count > 0 ? view.Live<BenchLeft>()[^1] : null;
        var step = view.Live<StepSighting>().Count > 0 ? view.Live<StepSighting>()[^1] : null;
        if (pause is not null && (step is null || view.Comes(step.Id, pause.Id)))
        {
            var said = pause.Value;
            return new(pause.Specimen, said.InHand.Length > 0 ? said.InHand : step?.Value.Does ?? "", said.Next, said.Note, said.InHand.Length > 0, pause.Id, pause.Entry.At);
        }

        return step is null ? null : new(step.Specimen, step.Value.Does, "", "", false, step.Id, step.Entry.At);
    }
}
