namespace Lidoff.Weighing.Beliefs;

/// <summary>
/// What everything together says about one variable: probabilities of its states, which add up to 1. Distinct from a room's local
/// belief on purpose: it must never be put back in as evidence. <paramref name="Exact"/> is true where the component was counted out
/// or is a tree that was gone through to the end.
/// </summary>
public sealed record JointBelief(string Variable, IReadOnlyList<string> States, IReadOnlyList<double> P, bool Exact);
