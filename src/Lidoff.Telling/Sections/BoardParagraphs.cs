using System.Globalization;
using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Boards;
using Lidoff.Telling.Documents;
using Lidoff.Telling.Reporting;

namespace Lidoff.Telling.Sections;

/// <summary>Which pictures lie on one board: by which landmarks, how well, and what was left out.</summary>
internal static class BoardParagraphs
{
    /// <summary>A paragraph a board on which any of the report's pictures lies or was to lie.</summary>
    public static IEnumerable<Paragraph> Of(ReportContext context)
    {
        var boards = context.Pictures.Select(picture => context.Model.Board(picture.Sha256)).OfType<Weighing.Modelling.PictureBoard>().DistinctBy(board => board.RestsOn).ToList();
        foreach (var board in boards)
        {
            foreach (var entry in board.RestsOn) context.Cite(entry);
            if (Lies(board.Laid, context) is { Length: > 0 } says) yield return Paragraph.Of(says);
        }
    }

    private static string Lies(LaidBoard board, ReportContext context)
    {
        var sentences = new List<string>();
        if (board.Pictures.Count > 1)
        {
            var first = context.Pictures.FirstOrDefault(picture => board.Picture(picture.Sha256) is not null)?.Sha256 ?? board.Pictures[0].Sha256;
            var ordered = board.Pictures.OrderByDescending(picture => picture.Sha256 == first).ThenBy(picture => picture.Name, NaturalOrder.Instance).ThenBy(picture => picture.Sha256, StringComparer.Ordinal).ToList();
            var names = ordered.Select(picture => picture.Name + (picture.Mirrored == ordered[0].Mirrored ? "" : " (seen from the other side)")).ToList();
            var marks = board.Pictures.SelectMany(picture => picture.Rests).Where(rest => rest is { Used: true, Tested: true }).Select(rest => rest.Name).Distinct(StringComparer.Ordinal).Order(NaturalOrder.Instance).ToList();
            sentences.Add($"{And(names)} lie on one board, laid by the landmarks {And(marks)}{Within(board)}.");
            sentences.Add(board.ScaleKnown ? "What was measured in one of them holds on the board, and so in the others." : "No length is known in any of them, so the board has no millimetres yet.");
        }

        sentences.AddRange(board.Pictures.SelectMany(picture => picture.Remarks));
        sentences.AddRange(board.Pictures.SelectMany(picture => picture.Warnings).Select(warning => warning.Say));
        sentences.AddRange(board.LeftOut.Select(left => left.Says));
        return string.Join(" ", sentences.Distinct(StringComparer.Ordinal));
    }

    /// <summary>How far the landmarks that hold it lie from where all pictures together put them, at most.</summary>
    private static string Within(LaidBoard board)
    {
        var rests = board.Pictures.SelectMany(picture => picture.Rests).Where(rest => rest is { Used: true, Tested: true }).ToList();
        if (rests.Count == 0) return "";
        return rests.All(rest => rest.Um is not null)
            ? string.Create(CultureInfo.InvariantCulture, $", which agree within {Math.Max(1, Math.Ceiling(rests.Max(rest => rest.Um!.Value))):0} µm")
            : string.Create(CultureInfo.InvariantCulture, $", which agree within {Math.Max(0.1, Math.Ceiling(rests.Max(rest => rest.Px) * 10) / 10):0.#} px");
    }

    private static string And(List<string> names) => names.Count < 2 ? string.Concat(names) : string.Join(", ", names.Take(names.Count - 1)) + " and " + names[^1];
}
