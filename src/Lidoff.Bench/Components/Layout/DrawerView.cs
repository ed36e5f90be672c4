using Lidoff.Evidence.Entries;
using Lidoff.Telling.Dossiers;
using Lidoff.Weighing.Becauses;
using Lidoff.Weighing.Moves;
using Lidoff.Weighing.Quarrels;
using Lidoff.Weighing.Questions;

namespace Lidoff.Bench.Components.Layout;

/// <summary>What the drawer says.</summary>
/// <param name="Moves">The best next moves first, at most sixty; the rest is counted.</param>
/// <param name="MoreMoves">How many more there are.</param>
/// <param name="Quarrels">Sightings that cannot all be true, in the book's order, at most eight; the rest is counted.</param>
/// <param name="MoreQuarrels">How many more there are.</param>
/// <param name="Because">What the selected thing rests on; null when nothing is selected.</param>
/// <param name="Asked">The question whose answer was asked for; null where none was.</param>
/// <param name="Bare">Whether nothing was noted in the dossier yet.</param>
public sealed record DrawerView(ValueList<NextMove> Moves, int MoreMoves, ValueList<Quarrel> Quarrels, int MoreQuarrels, BecauseNode? Because, BoardQuestion? Asked = null, bool Bare = false)
{
    private const int Most = 8;
    private const int MostMoves = 60;

    /// <summary>The drawer as the dossier stands, with <paramref name="reference"/> selected and a question asked; empty where none is.</summary>
    public static DrawerView Of(OpenDossier dossier, string? reference, string asked = "")
    {
        var view = dossier.Session.View;
        return new(
            [.. dossier.Moves.Take(MostMoves)],
            Math.Max(0, dossier.Moves.Count - MostMoves),
            [.. dossier.Quarrels.Take(Most)],
            Math.Max(0, dossier.Quarrels.Count - Most),
            reference is null ? null : BecauseTree.Of(view, dossier.Model, reference, dossier.Tied),
            asked.Length == 0 ? null : dossier.Questions.FirstOrDefault(each => each.Asked.Question == asked),
            view.Entries.All(each => each.Entry.Kind == "dossier"));
    }
}
