using Lidoff.Catalogue.Parts;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Grading;
using Lidoff.Evidence.Recomputing;
using Lidoff.Naming.Kinds;
using Lidoff.Naming.Knowing;
using Lidoff.Naming.Ranking;
using Lidoff.Numbers;
using Lidoff.Weighing.Beliefs;

namespace Lidoff.Weighing.Modelling;

/// <summary>
/// Names the part at a spot: the room's local belief, then the joint step over the spot's component. Today a component is one spot
/// and what people settled about it; a factor that ties several spots makes the component larger and nothing else changes.
/// </summary>
/// <param name="tables">The dossier.</param>
/// <param name="evidence">The evidence of a spot.</param>
/// <param name="ranker">The naming engine over the catalogue; made when first asked for.</param>
/// <param name="catalogue">Version of the catalogue: with another one every name is worked out anew.</param>
public sealed class IdentityStep(DossierTables tables, EvidenceStep evidence, Lazy<Ranker> ranker, InputTable<string, string> catalogue) : Step<string, IdentityAnswer>
{
    private const int Top = 10;

    // Decibans from which a kind of evidence counts as a line of its own: odds of about two to one.
    private const double LineFromDb = 3;

    // "In no list" is said from here on: likelier than everything else together.
    private const double NoneFrom = 0.5;

    private static readonly Dictionary<string, string> Lines = new(StringComparer.Ordinal)
    {
        // Size, height, pitch, pins and package of one body are one line: they are not independent given the part.
        ["mark"] = "mark", ["body"] = "outline", ["height"] = "outline", ["pitch"] = "outline", ["pins"] = "outline", ["package"] = "outline",
        ["bus"] = "bus", ["identity"] = "identity", ["id_register"] = "identity", ["ground_pins"] = "pins in circuit", ["ground pins"] = "pins in circuit",
    };

    /// <inheritdoc/>
    public override string Name => "identity";

    /// <inheritdoc/>
    public override bool Same(IdentityAnswer before, IdentityAnswer after) =>
        before.Says == after.Says && before.P.Equals(after.P) && before.Grade == after.Grade && before.Level == after.Level
        && before.Evidence.Told.Equals(after.Evidence.Told) && before.Evidence.Specimen == after.Evidence.Specimen && before.Evidence.Elsewhere.Equals(after.Evidence.Elsewhere) && before.Evidence.Machine == after.Evidence.Machine && before.Decisions.Equals(after.Decisions);

    /// <inheritdoc/>
    public override IdentityAnswer Compute(string key, IReads reads)
    {
        reads.Read(catalogue, DossierTables.Whole);
        var known = reads.Read(evidence, key);
        var decisions = tables.Decisions.About(key, reads);
        var families = decisions.Where(each => each.Value.Verdict == Naming.Kinds.Verdict.Family).Select(each => each.Value.Part).Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        var local = ranker.Value.Rank(known.Evidence, Top, Settled(decisions, families));
        var states = States(local, families, out var weights);
        var variable = new Variable(key, [.. states.Select(state => state.Words)], [.. weights.Select(p => Elementary.Log(Math.Max(p, 1e-12)))]);
        var joint = JointStep.Run([variable], decisions.Select((decision, number) => new DecisionFactor(key, number, decision.Value, states)))[0];
        var family = families.Count > 0 ? families[^1] : null;
        var (level, says, p) = Verdict(local, joint, states, family, decisions.Count > 0);
        var best = Best(joint, states, level == NameLevel.Family ? family : null);
        return new(key, known, local, joint, best, level, says, p, GradeOf(local, best, level, decisions.Count > 0), [.. decisions.Select(decision => decision.Id)]);
    }

    /// <summary>What a person spoke of is weighed by name, however unlikely the rest of the evidence makes it.</summary>
    private static Func<Part, bool>? Settled(IReadOnlyList<Sighting<IdentityDecision>> decisions, List<string> families)
    {
        var named = decisions.Where(each => each.Value.Verdict is Naming.Kinds.Verdict.Accept or Naming.Kinds.Verdict.Reject).Select(each => each.Value.Part).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return named.Count + families.Count == 0 ? null : part => named.Contains(part.Name) || families.Exists(family => PartFamily.Holds(family, part.Name));
    }

    /// <summary>
    /// The candidates, then for each accepted family its members in no list, then all other listed parts, then what is in no list. The
    /// shares of the families are taken out of the last.
    /// </summary>
    private static List<IdentityState> States(LocalBelief local, List<string> families, out List<double> weights)
    {
        List<IdentityState> states = [.. local.Candidates.Select(candidate => new IdentityState(IdentityState.Sort.Part, candidate.Part.Name))];
        weights = [.. local.Candidates.Select(candidate => candidate.P)];
        var unlisted = local.NoneP * Ranker.UnlistedMembers;
        foreach (var family in families)
        {
            states.Add(new(IdentityState.Sort.Unlisted, family));
            weights.Add(unlisted / families.Count);
        }

        states.AddRange([new(IdentityState.Sort.Others, ""), new(IdentityState.Sort.None, "")]);
        weights.AddRange([local.OthersP, families.Count > 0 ? local.NoneP - unlisted : local.NoneP]);
        return states;
    }

    /// <summary>Place of the likeliest candidate, within <paramref name="family"/> where one is given; −1 where there is none.</summary>
    private static int Best(JointBelief joint, List<IdentityState> states, string? family)
    {
        var best = -1;
        for (var i = 0; i < states.Count && states[i].Kind == IdentityState.Sort.Part; i++)
        {
            if ((family is null || DecisionFactor.InFamily(states[i], family)) && (best < 0 || joint.P[i] > joint.P[best])) best = i;
        }

        return best;
    }

    /// <summary>
    /// The verdict of the joint belief: a part where one is likely enough; the family a person accepted, where the rest of the evidence
    /// does not speak against it; the family the room named, unless a person has settled otherwise; "in no list" where that is likelier
    /// than not; undecided in between.
    /// </summary>
    private static (NameLevel Level, string Says, double P) Verdict(LocalBelief local, JointBelief joint, List<IdentityState> states, string? accepted, bool decided)
    {
        var none = joint.P[^1];
        if (Best(joint, states, null) is >= 0 and var best && joint.P[best] >= Ranker.PartFrom) return (NameLevel.Part, joint.States[best], joint.P[best]);
        if (accepted is not null && states.Select((state, i) => DecisionFactor.InFamily(state, accepted) ? joint.P[i] : 0).Sum() is >= Ranker.FamilyFrom and var together)
            return (NameLevel.Family, "family " + accepted, together);
        if (!decided && local.Level == NameLevel.Family && local.Family is { } family) return (NameLevel.Family, "family " + family.Name, family.P);
        return none >= NoneFrom ? (NameLevel.None, IdentityState.None, none) : (NameLevel.None, IdentityAnswer.Undecided, 0);
    }

    private static Grade GradeOf(LocalBelief local, int best, NameLevel level, bool decided)
    {
        // A person's word alone: "looks like".
        if (best < 0) return level == NameLevel.Family ? Grade.E1 : Grade.E0;
        var lines = local.Candidates[best].Because.Where(because => because.Db >= LineFromDb)
            .Select(because => Lines.GetValueOrDefault(because.Evidence, "")).Where(line => line.Length > 0).ToHashSet(StringComparer.Ordinal);
        if (level == NameLevel.None) return decided ? Grade.E1 : Grade.E0;
        if (lines.Contains("identity") && level == NameLevel.Part) return Grade.E4;
        // A catalogue row known only from memory cannot carry a name further than "looks like".
        if (local.Candidates[best].Part.Confidence == Confidence.Memory && lines.Count < 2) return Grade.E1;
        return lines.Count == 0 ? Grade.E1 : Grades.OfLines([.. lines.Select(_ => Grade.E2)]);
    }
}
