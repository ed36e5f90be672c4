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
        var first = new FirstOfChain(view);
        var cells = first.Ordered(view.Live<CellSighting>());
        var steps = first.Ordered(view.Live<StepSighting>()).Where(each => CellSteps.Touches(each.Value)).ToList();
        var specimens = view.Live<SpecimenSighting>().Select(each => each.Value.Specimen).Concat(cells.Select(each => each.Specimen)).Concat(steps.Select(each => each.Specimen).Where(name => name.Length > 0))
            .Distinct(StringComparer.Ordinal).Order(NaturalOrder.Instance).ToList();
        if (specimens.Count == 0) specimens.Add("");
        // A step that names no specimen may have been done to any.
        return [.. specimens.Select(specimen => Cell(first, specimen, [.. cells.Where(each => each.Specimen == specimen)], steps.LastOrDefault(each => each.Specimen == specimen || each.Specimen.Length == 0)))];
    }

    private static CellNow Cell(FirstOfChain first, string specimen, List<Sighting<CellSighting>> cells, Sighting<StepSighting>? step)
    {
        var newest = cells.LastOrDefault(each => each.Value.Connected is not null);
        // What was noted before the step says nothing of what came after it.
        var since = step is not null && (newest is null || first.Place(newest.Id) < first.Place(step.Id)) ? step.Value.Does : "";
        if (since.Length > 0) newest = null;
        var connected = newest?.Value.Connected;
        var damaged = cells.Select(each => each.Value.Damaged).LastOrDefault(each => each is not null);
        return new(specimen, connected, damaged, since, ResumeSentences.Cell(specimen, connected, damaged, since), newest?.Id, newest?.Entry.At);
    }

    private static InHand? Hand(IDossierView view)
    {
        // A step that was put right later is still the step it was.
        var first = new FirstOfChain(view);
        var pause = first.Last(view.Live<BenchLeft>());
        var step = first.Last(view.Live<StepSighting>());
        if (pause is not null && (step is null || first.Place(step.Id) < first.Place(pause.Id)))
        {
            var said = pause.Value;
            return new(pause.Specimen, said.InHand.Length > 0 ? said.InHand : step?.Value.Does ?? "", said.Next, said.Note, said.InHand.Length > 0, pause.Id, pause.Entry.At);
        }

        return step is null ? null : new(step.Specimen, step.Value.Does, "", "", false, step.Id, first.At(step.Id));
    }
}
