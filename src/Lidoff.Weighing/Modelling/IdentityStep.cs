using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Grading;
using Lidoff.Evidence.Recomputing;
using Lidoff.Naming.Kinds;
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
        && before.Evidence.Told.Equals(after.Evidence.Told) && before.Decisions.Equals(after.Decisions);

    /// <inheritdoc/>
    public override IdentityAnswer Compute(string key, IReads reads)
    {
        reads.Read(catalogue, DossierTables.Whole);
        var known = reads.Read(evidence, key);
        var local = ranker.Value.Rank(known.Evidence, Top);
        var decisions = tables.Decisions.About(key, reads);
        string[] states = [.. local.Candidates.Select(candidate => candidate.Part.Name), DecisionFactor.Others, DecisionFactor.None];
        double[] weights = [.. local.Candidates.Select(candidate => candidate.P), local.OthersP, local.NoneP];
        var variable = new Variable(key, states, [.. weights.Select(p => Elementary.Log(Math.Max(p, 1e-12)))]);
        var joint = JointStep.Run([variable], decisions.Select((decision, number) => new DecisionFactor(key, number, decision.Value, states)))[0];
        var (level, says, p) = Verdict(local, joint, decisions.Count > 0);
        return new(key, known, local, joint, level, says, p, GradeOf(local, level, decisions.Count > 0), [.. decisions.Select(decision => decision.Id)]);
    }

    /// <summary>
    /// The verdict of the joint belief: a part where one is likely enough; the family the room named, unless a person has settled
    /// otherwise; "in no list" where that is likelier than not; undecided in between.
    /// </summary>
    private static (NameLevel Level, string Says, double P) Verdict(LocalBelief local, JointBelief joint, bool decided)
    {
        var best = 0;
        for (var i = 1; i < local.Candidates.Count; i++)
        {
            if (joint.P[i] > joint.P[best]) best = i;
        }

        var none = joint.P[^1];
        if (local.Candidates.Count > 0 && joint.P[best] >= Ranker.PartFrom) return (NameLevel.Part, joint.States[best], joint.P[best]);
        if (!decided && local.Level == NameLevel.Family && local.Family is { } family) return (NameLevel.Family, "family " + family.Name, family.P);
        return none >= NoneFrom ? (NameLevel.None, DecisionFactor.None, none) : (NameLevel.None, IdentityAnswer.Undecided, 0);
    }

    private static Grade GradeOf(LocalBelief local, NameLevel level, bool decided)
    {
        if (local.Candidates.Count == 0) return Grade.E0;
        var lines = local.Candidates[0].Because.Where(because => because.Db >= LineFromDb)
            .Select(because => Lines.GetValueOrDefault(because.Evidence, "")).Where(line => line.Length > 0).ToHashSet(StringComparer.Ordinal);
        if (level == NameLevel.None) return decided ? Grade.E1 : Grade.E0;
        if (lines.Contains("identity") && level == NameLevel.Part) return Grade.E4;
        // A catalogue row known only from memory cannot carry a name further than "looks like".
        if (local.Candidates[0].Part.Confidence == Catalogue.Parts.Confidence.Memory && lines.Count < 2) return Grade.E1;
        return lines.Count == 0 ? Grade.E1 : Grades.OfLines([.. lines.Select(_ => Grade.E2)]);
    }
}
