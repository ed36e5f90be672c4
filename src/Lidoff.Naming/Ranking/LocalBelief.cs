namespace Lidoff.Naming.Ranking;

/// <summary>
/// What the evidence of one spot alone says about its identity. A joint belief, which also hears the other spots and the nets, is a
/// type of its own in Weighing. <paramref name="OthersP"/> is the share of all listed parts not among the candidates;
/// candidates + others + none make 1. <paramref name="Remarks"/> are sentences for people.
/// </summary>
public sealed record LocalBelief(
    IReadOnlyList<Candidate> Candidates,
    double OthersP,
    FamilyBelief? Family,
    double NoneP,
    NameLevel Level,
    IReadOnlyList<NextMeasure> Next,
    IReadOnlyList<string> Remarks);
