using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Numbers.Failing;
using Lidoff.Weighing.Modelling;
using Lidoff.Weighing.Quarrels;
using Lidoff.Weighing.Questions;

namespace Lidoff.Weighing.Moves;

/// <summary>
/// What to do next, as far as today's engines go: what was worked out stands before what was not, more bits a minute before fewer,
/// the harmless before the harmful at equal worth, then the shorter. Pure.
/// </summary>
public static class NextMoves
{
    /// <summary>
    /// Every move of the dossier: for its questions in the board's order, then for what no question asks. One move stands once.
    /// <paramref name="quarrels"/> are the dossier's where they were found already.
    /// </summary>
    public static ValueList<NextMove> Of(IDossierView view, DossierModel model, IReadOnlyList<TiedClaim>? claims = null, IReadOnlyList<Quarrel>? quarrels = null)
    {
        var bench = new MoveBench(Guard.NotNull(view), Guard.NotNull(model), claims ?? [], quarrels);
        var moves = QuestionBoard.Asked(view).SelectMany(question => For(question, bench)).Concat(GeneralMoves.Of(bench));
        return [.. Ordered(moves.DistinctBy(move => (move.Move, move.About)))];
    }

    /// <summary>The moves for one question, named by its name, its text, or the text that a move itself gives ("What is U3?").</summary>
    public static Outcome<ValueList<NextMove>> For(IDossierView view, DossierModel model, string question, IReadOnlyList<TiedClaim>? claims = null)
    {
        var bench = new MoveBench(Guard.NotNull(view), Guard.NotNull(model), claims ?? []);
        var asked = QuestionBoard.Asked(view);
        var meant = asked.FirstOrDefault(each => each.Value.Question == question) ?? asked.FirstOrDefault(each => each.Value.Text == question);
        if (meant is not null) return For(meant, bench);
        ValueList<NextMove> general = [.. Ordered(GeneralMoves.Of(bench).Where(move => move.Question == question))];
        return general.Count > 0 ? general : NoQuestion(question, [.. asked.Select(each => each.Value.Question)]);
    }

    internal static ValueList<NextMove> For(Sighting<QuestionAsked> question, MoveBench bench)
    {
        var (asked, finder) = (question.Value, new MoveFinder(bench, question.Value.Text));
        if (asked.Ties.Count == 0 && asked.Answer.Length == 0) finder.Add(MoveSentences.Tie(asked.Question), MoveMinutes.Keyboard, MoveSentences.NoTie, "question:" + asked.Question);
        foreach (var tie in asked.Ties) finder.Reference(tie);
        return [.. Ordered(finder.Found.DistinctBy(move => (move.Move, move.About)))];
    }

    private static IEnumerable<NextMove> Ordered(IEnumerable<NextMove> moves) => moves
        .OrderByDescending(move => Math.Round(move.Worth ?? -1, 3)).ThenBy(move => move.Risk).ThenBy(move => move.Minutes);

    private static Fault NoQuestion(string question, IReadOnlyList<string> asked) => new(
        "--for",
        asked.Count == 0 ? "a question of the board" : string.Join(", ", asked),
        asked.Count == 0
            ? $"There is no question '{question}': nobody has put a question on the board yet (kind \"question\")."
            : $"There is no question '{question}'; on the board are {string.Join(", ", asked)}.");
}
