namespace Lidoff.Evidence.Grading;

/// <summary>How grades combine. A chain is as good as its worst link; two independent lines at E2 make E3.</summary>
public static class Grades
{
    /// <summary>The worst of several; E0 for none.</summary>
    public static Grade Worst(IEnumerable<Grade> grades) => grades.DefaultIfEmpty(Grade.E0).Min();

    /// <summary>The best of several lines about the same thing, lifted to E3 where at least two independent ones stand at E2 or better.</summary>
    /// <param name="independentLines">One grade a line; lines that share an instrument reading or a picture are one line.</param>
    public static Grade OfLines(IReadOnlyCollection<Grade> independentLines)
    {
        var best = independentLines.DefaultIfEmpty(Grade.E0).Max();
        return best == Grade.E2 && independentLines.Count(grade => grade >= Grade.E2) >= 2 ? Grade.E3 : best;
    }

    /// <summary>What the grade says, for people.</summary>
    public static string Says(Grade grade) => grade switch
    {
        Grade.E0 => "guess",
        Grade.E1 => "looks like",
        Grade.E2 => "one line of evidence",
        Grade.E3 => "two independent lines",
        Grade.E4 => "measured in circuit",
        _ => "read back or confirmed by its maker",
    };
}
