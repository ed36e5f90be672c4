using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Numbers.Failing;
using Lidoff.Opening.Kinds;

namespace Lidoff.Opening.Resuming;

/// <summary>The plan of opening: every planned step in an order in which it can be done. Pure.</summary>
public static class PlanBook
{
    /// <summary>
    /// The planned steps that were not dropped: those that come first stand first, otherwise in natural order of their names.
    /// <paramref name="known"/> tells whether a reference in <c>record_first</c> has a value; without it only a person's word counts.
    /// </summary>
    public static ValueList<PlannedStep> Of(IDossierView view, Func<string, bool>? known = null)
    {
        Guard.NotNull(view);
        var plans = view.Newest<StepPlanned>(plan => plan.Plan).Where(plan => !plan.Value.Dropped).ToDictionary(plan => plan.Value.Plan, StringComparer.Ordinal);
        var done = view.Live<StepSighting>().Select(step => step.Value.Plan).Where(name => name.Length > 0).ToHashSet(StringComparer.Ordinal);
        return [.. Ordered(plans).Select(plan => Step(plan, plans, done, known))];
    }

    private static PlannedStep Step(Sighting<StepPlanned> plan, Dictionary<string, Sighting<StepPlanned>> plans, HashSet<string> done, Func<string, bool>? known)
    {
        // A plan that was dropped, or never noted, holds up nothing.
        var waits = plan.Value.After.Where(name => plans.ContainsKey(name) && !done.Contains(name)).Order(NaturalOrder.Instance).ToList();
        var state = done.Contains(plan.Value.Plan) ? PlanState.Done : waits.Count > 0 ? PlanState.Waiting : PlanState.Open;
        var first = plan.Value.RecordFirst.Select(what => new RecordedFirst(what, plan.Value.Recorded.Contains(what, StringComparer.Ordinal) || known?.Invoke(what) == true));
        return new(plan.Value, plan.Specimen, plan.Id, state, [.. waits], [.. first]);
    }

    private static List<Sighting<StepPlanned>> Ordered(Dictionary<string, Sighting<StepPlanned>> plans)
    {
        var ordered = new List<Sighting<StepPlanned>>();
        var placed = new HashSet<string>(StringComparer.Ordinal);
        var left = plans.Keys.Order(NaturalOrder.Instance).ThenBy(name => name, StringComparer.Ordinal).ToList();
        while (left.Count > 0)
        {
            // Plans that wait for each other in a circle are taken in the order of their names.
            var next = left.FirstOrDefault(name => plans[name].Value.After.All(before => placed.Contains(before) || !plans.ContainsKey(before))) ?? left[0];
            ordered.Add(plans[next]);
            placed.Add(next);
            left.Remove(next);
        }

        return ordered;
    }
}
