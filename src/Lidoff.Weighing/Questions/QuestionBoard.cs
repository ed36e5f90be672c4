using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Grading;
using Lidoff.Numbers.Failing;
using Lidoff.Weighing.Modelling;
using Lidoff.Weighing.Moves;
using Lidoff.Weighing.Quarrels;

namespace Lidoff.Weighing.Questions;

/// <summary>The questions a dossier must answer, each with its present answer, spread, grade, and the next move. Pure.</summary>
public static class QuestionBoard
{
    /// <summary>What stands where there is no answer.</summary>
    public const string Open = "open";

    /// <summary>A person's own words as the only answer rest on that person's word alone.</summary>
    private const Grade OfWords = Grade.E1;

    /// <summary>The questions that were not dropped: by their place, those without one last, then in natural order of their names.</summary>
    public static ValueList<BoardQuestion> Of(IDossierView view, DossierModel model, IReadOnlyList<TiedClaim>? claims = null, IReadOnlyList<Quarrel>? quarrels = null)
    {
        var bench = new MoveBench(Guard.NotNull(view), Guard.NotNull(model), claims ?? [], quarrels);
        return [.. Asked(view).Select(question => Answer(question, bench))];
    }

    /// <summary>The questions as asked, in the board's order.</summary>
    internal static IReadOnlyList<Sighting<QuestionAsked>> Asked(IDossierView view) =>
        [.. view.Newest<QuestionAsked>(question => question.Question).Where(question => !question.Value.Dropped).OrderBy(question => question.Value.Order ?? double.PositiveInfinity)];

    private static BoardQuestion Answer(Sighting<QuestionAsked> question, MoveBench bench)
    {
        var asked = question.Value;
        var ties = asked.Ties.Select(tie => Ties.Of(tie, bench)).ToList();
        var quarrels = bench.Quarrels.Where(quarrel => ties.Any(tie => tie.RestsOn.Intersect(quarrel.Members).Any())).ToList();
        var missing = ties.Where(tie => tie.Missing.Length > 0).Select(tie => tie.Missing).Distinct(StringComparer.Ordinal).ToList();
        var there = ties.Where(tie => tie.Missing.Length == 0).ToList();
        List<string> said = [.. there.Select(tie => Said(tie, tie.Printed, asked, ties.Count, there.Count))];
        if (asked.Answer.Length > 0) said.Insert(0, asked.Answer);
        var spread = there.Where(tie => tie.Spread.Length > 0).Select(tie => Said(tie, tie.Spread, asked, ties.Count, there.Count));
        var state = quarrels.Count > 0 ? QuestionState.Quarrel
            : missing.Count > 0 ? QuestionState.Missing
            : said.Count == 0 || there.Any(tie => !tie.Decided) ? QuestionState.Open
            : QuestionState.Answered;
        var grade = said.Count == 0 ? Grade.E0 : Grades.Worst(there.Select(tie => tie.Grade).Concat(asked.Answer.Length > 0 ? [OfWords] : []));
        var moves = NextMoves.For(question, bench);
        return new(
            asked, question.Id, state, said.Count == 0 ? Open : string.Join("; ", said), string.Join("; ", spread), grade,
            [.. ties], [.. missing], [.. quarrels.Select(quarrel => quarrel.Say)], moves.Count > 0 ? moves[0] : null);
    }

    // One value answers by itself; of several each says what it is. A claim is a sentence already.
    private static string Said(TieAnswer tie, string text, QuestionAsked asked, int ties, int there)
    {
        if (ties == 1 || tie.Says.Length == 0) return text;
        // A number that was reckoned for this very question would only say the question again.
        if (!string.Equals(tie.Says, asked.Text, StringComparison.OrdinalIgnoreCase)) return $"{tie.Says.TrimEnd('?')}: {text}";
        return there == 1 ? text : $"{tie.Reference}: {text}";
    }
}
