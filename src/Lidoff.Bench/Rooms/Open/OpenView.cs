using System.Globalization;
using Lidoff.Bench.Showing;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Opening.Kinds;
using Lidoff.Opening.Resuming;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Rooms.Open;

/// <summary>What the room Open shows.</summary>
/// <param name="Resume">What to know first after a break.</param>
/// <param name="Specimens">The units, as stored.</param>
/// <param name="States">How it behaved before it was opened.</param>
/// <param name="Steps">What was done, in order.</param>
/// <param name="Plans">What is meant to be done and is not, in an order in which it can be done.</param>
/// <param name="Masses">What was weighed.</param>
/// <param name="Sums">Parts against the whole, for each specimen.</param>
/// <param name="Closing">What to see to before the bench is left, and what of it the dossier knows.</param>
/// <param name="NextPlan">A name no plan has yet.</param>
/// <param name="Tools">Tools that steps named, each once.</param>
/// <param name="Minutes">Time of all steps, in words; empty where none was noted.</param>
public sealed record OpenView(
    ResumeView Resume, ValueList<Noted<SpecimenSighting>> Specimens, ValueList<Noted<StateSighting>> States, ValueList<StepRow> Steps, ValueList<PlannedStep> Plans,
    ValueList<MassRow> Masses, ValueList<MassSum> Sums, ValueList<ClosingTick> Closing, string NextPlan, ValueList<string> Tools, string Minutes)
{
    /// <summary>Names of the specimens anybody spoke of, in natural order.</summary>
    public IReadOnlyList<string> Names =>
    [
        .. Specimens.Select(each => each.Value.Specimen).Concat(Steps.Select(step => step.Specimen)).Concat(Masses.Select(mass => mass.Noted.Specimen))
            .Where(name => name.Length > 0).Distinct(StringComparer.Ordinal).Order(NaturalOrder.Instance),
    ];

    /// <summary>The room as the dossier stands.</summary>
    public static OpenView Of(OpenDossier dossier)
    {
        var view = dossier.Session.View;
        var specimens = Noted<SpecimenSighting>.All(view);
        var first = new FirstOfChain(view);
        var masses = MassesOf(view, first);
        var steps = StepsOf(dossier, first, masses);
        var plans = PlanBook.Of(view, dossier.Model.Has).Where(plan => plan.State != PlanState.Done);
        var card = ResumeCard.Of(view, dossier.Model.Has);
        var minutes = steps.Where(step => step.Step.Minutes is not null).Sum(step => step.Step.Minutes);
        return new(
            new(CellState.Of(card, Noted<CellSighting>.All(view)), card, card.InHand is { } hand ? Time(hand.At) : ""), specimens, Noted<StateSighting>.All(view), [.. steps], [.. plans], masses, MassSum.Of(specimens, Noted<MassSighting>.All(view)), ClosingList.Of(view), NewPlan(view),
            [.. steps.Select(step => step.Step.Tool).Where(tool => tool.Length > 0).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)],
            steps.Any(step => step.Step.Minutes is not null) ? Showing.Minutes.Of(minutes) : "");
    }

    private static List<StepRow> StepsOf(OpenDossier dossier, FirstOfChain first, ValueList<MassRow> masses) =>
    [
        .. first.Ordered(dossier.Session.View.Live<StepSighting>()).Select(step => new StepRow(
            step.Id, step.Specimen, step.Value,
            step.Value.Picture.Length > 0 && dossier.Model.Picture(step.Value.Picture) is { Found: true } picture ? picture.Sha256 : "",
            [.. masses.Where(mass => mass.Step == step.Id).Select(mass => (mass.Noted.Value.Spot.Length > 0 ? mass.Noted.Value.Spot : "whole") + " " + Plain.Number(mass.Noted.Value.G) + " g")],
            Time(first.At(step.Id)))),
    ];

    // A mass belongs to the step it was said to be weighed at, and to none for having been noted after it.
    private static ValueList<MassRow> MassesOf(IDossierView view, FirstOfChain first)
    {
        var steps = view.Live<StepSighting>().ToLookup(step => first.Of(step.Id), step => step.Id);
        return [.. first.Ordered(view.Live<MassSighting>()).Select(mass => new MassRow(
            new(mass.Id, mass.Specimen, mass.Value),
            mass.Entry.Targets.Count > 0 && steps[first.Of(mass.Entry.Targets[0])].ToList() is [.., var step] ? step : null))];
    }

    private static string NewPlan(IDossierView view)
    {
        var taken = view.Live<StepPlanned>().Select(plan => plan.Value.Plan).Concat(view.Live<StepSighting>().Select(step => step.Value.Plan));
        return FreeName.Of("P", taken);
    }

    private static string Time(DateTimeOffset at) => at.ToUniversalTime().ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
}
