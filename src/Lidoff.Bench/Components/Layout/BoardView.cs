using Lidoff.Bench.Showing;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Reckoning.Bound;
using Lidoff.Seeing.Kinds;
using Lidoff.Telling.Dossiers;
using Lidoff.Weighing.Questions;

namespace Lidoff.Bench.Components.Layout;

/// <summary>The question board.</summary>
/// <param name="Questions">In the board's order.</param>
/// <param name="References">What a question can be tied to today, for the field that ties one.</param>
/// <param name="Offers">Numbers that say they answer one of the questions and are not tied to it yet.</param>
/// <param name="NextName">The first free name for a new question: "Q7".</param>
public sealed record BoardView(ValueList<BoardQuestion> Questions, ValueList<string> References, ValueList<TieOffer> Offers, string NextName)
{
    /// <summary>The board as the dossier stands.</summary>
    public static BoardView Of(OpenDossier dossier)
    {
        var view = dossier.Session.View;
        // Names of dropped questions stay taken: an old report may still cite them.
        var questions = dossier.Questions;
        return new(questions, [.. Refer(dossier)], [.. Offer(view, questions)], FreeName.Of("Q", view.Live<QuestionAsked>().Select(question => question.Value.Question)));
    }

    private static IEnumerable<TieOffer> Offer(IDossierView view, IEnumerable<BoardQuestion> questions)
    {
        var numbers = view.Newest<ReckonBinding>(each => each.Reckoning).Where(each => each.Value.Says.Length > 0).ToList();
        foreach (var asked in questions.Select(question => question.Asked))
        {
            foreach (var number in numbers.Select(each => each.Value).Where(each => Same(each.Says, asked.Text)))
            {
                if (!asked.Ties.Contains("reckoning:" + number.Reckoning) && !asked.Ties.Contains(number.Reckoning)) yield return new(asked.Question, number.Reckoning);
            }
        }
    }

    private static bool Same(string a, string b) => a.Trim(' ', '?').Equals(b.Trim(' ', '?'), StringComparison.OrdinalIgnoreCase);

    private static IEnumerable<string> Refer(OpenDossier dossier)
    {
        var view = dossier.Session.View;
        foreach (var name in ReckoningNames.Of(view)) yield return "reckoning:" + name;
        foreach (var spot in SpotNames.Of(view)) yield return "part:" + spot;
        foreach (var length in view.Live<LengthSighting>().Select(length => $"length:{length.Value.Spot}:{length.Value.What}").Distinct(StringComparer.Ordinal)) yield return length;
        foreach (var claim in dossier.Claims) yield return "claim:" + claim.Name;
    }
}
