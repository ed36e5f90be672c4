using Lidoff.Telling.Claims;
using Lidoff.Telling.Documents;
using Lidoff.Telling.Reporting;
using Lidoff.Weighing.Questions;

namespace Lidoff.Telling.Sections;

/// <summary>What was asked and what is answered so far: every question of the board with its answer, its doubt and its grade.</summary>
public sealed class QuestionsSection : IReportSection
{
    /// <inheritdoc/>
    public string Name => "questions";

    /// <inheritdoc/>
    public int Place => 5;

    /// <inheritdoc/>
    public bool Graded => true;

    /// <inheritdoc/>
    public Section? Build(ReportContext context)
    {
        var board = QuestionBoard.Of(context.View, context.Model, context.Tied, context.Quarrels);
        if (board.Count == 0) return null;
        var rows = board.Select(question => Row(question, context)).ToList();
        return new("questions", "What was asked", [new Table("Each question with its answer today. Open means that nothing answers it yet.", ["Question", "Answer", "90 % interval, or rivals", "Grade", "Next move"], rows, new HashSet<int>())]);
    }

    private static IReadOnlyList<IReadOnlyList<Inline>> Row(BoardQuestion question, ReportContext context)
    {
        context.Cite(question.Entry);
        return
        [
            [new TextRun(question.Asked.Text), new TextRun(" "), new LinkRun(question.Asked.Question, ReportContext.Anchor(question.Entry), LinkKind.Anchor)],
            Answer(question, context),
            [new TextRun(question.Spread)],
            [new TextRun(question.Answer == QuestionBoard.Open ? "" : question.Grade.ToString())],
            [new TextRun(question.Next?.Move ?? "")],
        ];
    }

    private static List<Inline> Answer(BoardQuestion question, ReportContext context)
    {
        List<Inline> said = question.Asked.Answer.Length > 0 ? [new TextRun(question.Asked.Answer)] : [];
        foreach (var tie in question.Ties)
        {
            if (said.Count > 0) said.Add(new TextRun("; "));
            // A claim stands in the report with its own reasons; a value leads to its because.
            if (tie.Reference.StartsWith("claim:", StringComparison.Ordinal)) said.Add(new TextRun(tie.Missing.Length > 0 ? tie.Missing : tie.Printed));
            else said.Add(context.Value(tie.Reference));
        }

        foreach (var quarrel in question.Quarrels) said.Add(new TextRun(" Sources disagree: " + quarrel));
        if (said.Count == 0) said.Add(new TextRun(QuestionBoard.Open));
        return said;
    }
}
