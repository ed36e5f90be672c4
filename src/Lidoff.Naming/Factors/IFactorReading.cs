namespace Lidoff.Naming.Factors;

/// <summary>
/// What one factor says about every hypothesis: natural logs of likelihood ratios against a part about which nothing is known. A fact
/// the catalogue does not know gives 0.
/// </summary>
public interface IFactorReading
{
    /// <summary>For a part, by its place in the catalogue's order.</summary>
    double Part(int index);

    /// <summary>For "a part of this group that is not in the catalogue", by the group's place.</summary>
    double None(int group);

    /// <summary>The sentence for a part.</summary>
    string Say(int index);
}
