using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Grading;
using Lidoff.Naming.Ranking;
using Lidoff.Weighing.Beliefs;

namespace Lidoff.Weighing.Modelling;

/// <summary>
/// Which part sits at a spot: what its own evidence says, what everything together says, and the verdict. <paramref name="Says"/> is a
/// part's name, "family …" or "not in any list".
/// </summary>
/// <param name="Spot">The spot.</param>
/// <param name="Evidence">What it leans on.</param>
/// <param name="Local">Belief from this spot's evidence alone.</param>
/// <param name="Joint">Belief of the joint step over the same candidates, decisions included.</param>
/// <param name="Best">Place of the likeliest candidate, of the family where that is the verdict; −1 where there is none.</param>
/// <param name="Level">Part, family or none.</param>
/// <param name="Says">The verdict in words.</param>
/// <param name="P">Its probability.</param>
/// <param name="Grade">How well it is known.</param>
/// <param name="Decisions">What a person settled about it, newest last.</param>
public sealed record IdentityAnswer(
    string Spot,
    SpotEvidence Evidence,
    LocalBelief Local,
    JointBelief Joint,
    int Best,
    NameLevel Level,
    string Says,
    double P,
    Grade Grade,
    ValueList<EntryId> Decisions)
{
    /// <summary>The verdict where neither a part nor a family nor "in no list" is likely enough.</summary>
    public const string Undecided = "undecided";

    /// <summary>True when something was seen or settled that can name a part; a role alone cannot.</summary>
    public bool Asked => Decisions.Count > 0 || Evidence.Told.Any(told => told.Evidence is not ("role" or "class" or "supply"));
}
