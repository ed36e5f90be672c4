namespace Lidoff.Naming.Factors;

/// <summary>
/// A reading that also hears of unlisted siblings: parts that are not in the catalogue but resemble a listed one, so that other evidence
/// (its package, its bus) mostly fits them as it fits that part. They belong to "none of these".
/// </summary>
internal interface ISiblingReading
{
    /// <summary>
    /// For each group the listed part whose sibling explains best, and the natural log of that share's likelihood ratio, to be added to
    /// the group's prior of "none".
    /// </summary>
    IEnumerable<(int Group, int Part, double Log)> Siblings { get; }
}
