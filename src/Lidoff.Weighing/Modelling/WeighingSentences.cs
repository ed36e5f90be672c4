using System.Globalization;

namespace Lidoff.Weighing.Modelling;

/// <summary>Every sentence the model says about references and measurements that lead nowhere.</summary>
public static class WeighingSentences
{
    /// <summary>A reference that is not one of the known forms.</summary>
    public static string UnknownReference(string reference) =>
        $"'{reference}' is no reference Lidoff knows; write length:SPOT:WHAT, body:SPOT:length (or width, height), pitch:SPOT, angle:SPOT:WHAT, area:SPOT:WHAT, part:SPOT, mark:SPOT, mass:SPOT, state:NAME or reckoning:NAME.";

    /// <summary>No length under that name at that spot.</summary>
    public static string NoLength(string spot, string what, IReadOnlyList<string> known) => known.Count == 0
        ? $"Nobody has measured '{what}' of {spot} yet."
        : $"Nobody has measured '{what}' of {spot} yet; measured of it: {string.Join(", ", known)}.";

    /// <summary>A spot without a sighting of the kind asked for.</summary>
    public static string Nothing(string what, string spot) => $"There is no {what} of {spot} yet.";

    /// <summary>A spot of which only its role or nothing at all is known.</summary>
    public static string NothingToName(string spot) => $"Nothing was seen yet that could name the part at {spot}: no mark, size, pins, address or register.";

    /// <summary>Whose word a mark is that no person read.</summary>
    public const string ReadByMachine = "read by the machine";

    /// <summary>How sure a machine is of all it read.</summary>
    public static string ByMachine(double p) => $"No person has read this mark: the machine did, and by its own reckoning all of it is right with {ValueText.Percent(p)}.";

    /// <summary>Another specimen's mark reads otherwise.</summary>
    public static string Elsewhere(string spot, string specimen, OtherSpecimen other) =>
        $"Specimen {other.Specimen} reads {other.Told} there. That does not count for {specimen}: nobody said that the two are alike at {spot}.";

    /// <summary>A picture reference that fits no file of the dossier.</summary>
    public static string NoPicture(string picture) => $"No picture of this dossier is called '{picture}'; give its file name, its entry or the start of its hash.";

    /// <summary>A picture reference that fits several.</summary>
    public static string SeveralPictures(string picture, int count) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} different pictures of this dossier are called '{picture}'; name the one you mean by the start of its hash.");

    /// <summary>A length clicked in a picture that has no scale.</summary>
    public static string NoScale(string picture) => $"'{picture}' has no scale: note a known length in it (kind \"scale\").";

    /// <summary>A length clicked in a picture that lies on a board of which no length is known.</summary>
    public static string NoBoardScale(string picture) => $"'{picture}' lies on its board, but no length on that board is known: note one in any of its pictures (kind \"scale\").";

    /// <summary>How a length was measured by the board.</summary>
    public static string ByTheBoard(string clicked, int landmarks) =>
        string.Create(CultureInfo.InvariantCulture, $"{clicked}, scale from the board, by {landmarks} landmark{(landmarks == 1 ? "" : "s")}");

    /// <summary>A file that cannot be read as a picture.</summary>
    public static string NotAPicture(string picture) => $"'{picture}' cannot be read as a picture, so nothing can be measured in it.";

    /// <summary>Several readings of which the last one counts.</summary>
    public static string NewestCounts(IReadOnlyList<string> readings) =>
        $"The newest of {readings.Count} readings counts: {readings[^1]}; earlier: {string.Join(", ", readings.Take(readings.Count - 1))}.";

    /// <summary>A claim nobody has written.</summary>
    public static string NoClaim(string name) => $"There is no claim called '{name}' in this dossier.";

    /// <summary>A claim that reads otherwise than published.</summary>
    public static string UnsupportedClaim(string name) => $"{name} leans on something that has not been measured yet";

    /// <summary>The listed part that fits best where the verdict is no single part.</summary>
    public static string Nearest(Naming.Ranking.Candidate candidate) => $"The nearest listed part is {candidate.Part.Name}, {ValueText.Percent(candidate.P)} by what was seen:";

    /// <summary>What a person settled about a spot.</summary>
    public static string Decided(Naming.Kinds.IdentityDecision decision) => (decision.Verdict switch
    {
        Naming.Kinds.Verdict.Accept => $"A person accepted {decision.Part}",
        Naming.Kinds.Verdict.Family => $"A person accepted the family {decision.Part}",
        Naming.Kinds.Verdict.Reject => $"A person rejected {decision.Part}",
        _ => "A person said that it is in no list",
    }) + $", because {decision.Why.TrimEnd('.')}.";

    /// <summary>A claim that moved.</summary>
    public static string StaleClaim(string name) => $"{name} does not say any more what was published";

    /// <summary>A reckoning nobody has noted.</summary>
    public static string NoReckoning(string name) => $"There is no reckoning called '{name}' in this dossier.";

    /// <summary>A name that stands for itself: a reckoning that leans on itself.</summary>
    public static string Circle(string name) => $"The reckoning '{name}' leans on itself, over others or directly; break the circle.";

    /// <summary>Readings that disagree.</summary>
    public static string Widened(double times) => string.Create(CultureInfo.InvariantCulture, $"The readings disagree more than their doubts allow; the doubt was widened {times:0.0} times.");

    /// <summary>A standard size that a reading must be.</summary>
    public static string MustBe(Seeing.Standards.StandardSnap snap) => string.Create(CultureInfo.InvariantCulture, $"That is the standard {snap.Kind} of {snap.Mm:0.###} mm, {Math.Min(snap.LikelihoodRatio, 1e6):0} to 1.");

    /// <summary>What follows a reading that was scaled by the spot's own package.</summary>
    public const string ByItsOwnPackage = " (scaled by its own package, so it says nothing of which package that is)";
}
