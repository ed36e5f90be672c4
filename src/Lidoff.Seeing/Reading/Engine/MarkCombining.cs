using Lidoff.Catalogue.Searching;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Reading.Lattices;

namespace Lidoff.Seeing.Reading.Engine;

/// <summary>
/// Several pictures of one mark read as one: lines that read alike are matched in their order, and their probabilities are multiplied. A
/// line that only one picture shows stays as that one reads it.
/// </summary>
public static class MarkCombining
{
    // Two lines are one where at least half their characters agree. A choice of ours.
    private const double LeastAlike = 0.5;

    /// <summary>Combines scans of one mark, two at least. A line lies in the first picture that shows it, and where the others show it is kept beside that.</summary>
    /// <param name="scans">The scans.</param>
    /// <param name="lineTemperature">What logs of whole lines are divided by.</param>
    public static Outcome<ReadMark> Of(IReadOnlyList<ScannedMark> scans, double lineTemperature)
    {
        Guard.That(Guard.NotNull(scans).Count > 1, "two scans at least");
        var rows = scans[0].Lines.Select(line => new Row([line.Lattice], [(line.Outline, 0)], Best([line.Lattice]))).ToList();
        for (var i = 1; i < scans.Count; i++)
        {
            var shared = 0;
            rows = Matched(rows, [.. scans[i].Lines.Select(line => new Row([line.Lattice], [(line.Outline, i)], Best([line.Lattice])))], ref shared);
            if (shared == 0) return ReadingSentences.NoCommonLine;
        }

        var lines = rows.Select(row => new ReadLine(LineReading.Of(row.Lattices, lineTemperature), row.Shown[0].Region, row.Shown[0].Picture) { Also = [.. row.Shown.Skip(1)] }).Where(line => !line.Reading.IsEmpty);
        return new ReadMark(MarkReader.TurnOf(scans[0].Turn), [.. MarkRows.Of(lines)], [], scans[0].Dot, [])
        {
            PinOne = scans[0].Dot is { } dot ? PinOne.Of(dot, scans[0].DotP, scans[0].Body, MarkReader.TurnOf(scans[0].Turn)) : null,
            Emblems = scans[0].Emblems,
        };
    }

    /// <summary>Matches two lists in their order so that what agrees is the most, by dynamic programming.</summary>
    private static List<Row> Matched(List<Row> a, List<Row> b, ref int shared)
    {
        var best = new double[a.Count + 1, b.Count + 1];
        for (var i = a.Count - 1; i >= 0; i--)
        {
            for (var j = b.Count - 1; j >= 0; j--)
            {
                best[i, j] = Math.Max(Math.Max(best[i + 1, j], best[i, j + 1]), Worth(a[i], b[j]) + best[i + 1, j + 1]);
            }
        }

        var rows = new List<Row>();
        for (int i = 0, j = 0; i < a.Count || j < b.Count;)
        {
            if (i < a.Count && j < b.Count && Worth(a[i], b[j]) > 0 && best[i, j] == Worth(a[i], b[j]) + best[i + 1, j + 1])
            {
                List<CtcLattice> both = [.. a[i].Lattices, .. b[j].Lattices];
                rows.Add(new(both, [.. a[i].Shown, .. b[j].Shown], Best(both)));
                shared++;
                (i, j) = (i + 1, j + 1);
            }
            else if (j >= b.Count || (i < a.Count && best[i, j] == best[i + 1, j]))
            {
                rows.Add(a[i++]);
            }
            else
            {
                rows.Add(b[j++]);
            }
        }

        return rows;
    }

    private static double Worth(Row a, Row b)
    {
        var length = Math.Max(a.Text.Length, b.Text.Length);
        if (length == 0) return 0;
        var alike = length - EditDistance.Of(a.Text, b.Text);
        return alike >= LeastAlike * length ? alike : 0;
    }

    private static string Best(IReadOnlyList<CtcLattice> lattices) => LineReading.Of(lattices).Readings[0].Text;

    private sealed record Row(IReadOnlyList<CtcLattice> Lattices, IReadOnlyList<(PictureRegion Region, int Picture)> Shown, string Text);
}
