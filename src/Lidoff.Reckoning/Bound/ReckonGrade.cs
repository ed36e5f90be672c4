using Lidoff.Evidence.Grading;

namespace Lidoff.Reckoning.Bound;

/// <summary>
/// How well a reckoned number is known: as well as its worst input, and never better than its formula allows. Convention of
/// ours: an experimental formula gives at most E1; a checked one at most E3, because nobody measured the result; one
/// validated on measured devices at most E4.
/// </summary>
public static class ReckonGrade
{
    /// <summary>A typed value, or a default left standing: a fact recalled from memory.</summary>
    public const Grade OfTyped = Grade.E1;

    /// <summary>The grade of a number from those of its inputs.</summary>
    public static Grade Of(IEnumerable<Grade> inputs, Maturity maturity)
    {
        var most = maturity switch
        {
            Maturity.Experimental => Grade.E1,
            Maturity.Checked => Grade.E3,
            _ => Grade.E4,
        };
        var worst = Grades.Worst(inputs);
        return worst < most ? worst : most;
    }
}
