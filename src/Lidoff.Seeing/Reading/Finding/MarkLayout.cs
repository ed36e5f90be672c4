using Lidoff.Evidence.Entries;
using Lidoff.Numbers;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Reading.Finding;

/// <summary>
/// The lines of one mark in reading order, and which way up it is by the vote of all lines' directions, each by its length.
/// </summary>
/// <param name="Lines">Outlines from the top down, in one row from its beginning on.</param>
/// <param name="Turn">Common direction of the text, radians clockwise from the x axis.</param>
/// <param name="Vote">Length of the votes' mean, 0 to 1: 1 where all agree, near 0 where as many say the opposite.</param>
public sealed record MarkLayout(ValueList<PictureRegion> Lines, double Turn, double Vote)
{
    // Lines this far from the common direction are read as they stand; those against it are turned round.
    private const double Against = 3 * Math.PI / 4;

    /// <summary>Lays found lines in order.</summary>
    /// <param name="lines">The lines, in any one frame.</param>
    /// <param name="upright">True: the text runs to the right, whatever the directions say; a line that runs to the left is turned round.</param>
    public static MarkLayout Of(IReadOnlyList<FoundLine> lines, bool upright = false)
    {
        Guard.NotNull(lines);
        if (upright) lines = [.. lines.Select(line => Math.Abs(line.Outline.Turn) <= Math.PI / 2 ? line : line with { Outline = line.Outline.TurnedRound() })];
        double x = 0, y = 0, sum = 0;
        foreach (var line in lines)
        {
            var (weight, (ax, ay)) = (line.Outline.Width * line.Share, line.Outline.Along);
            x += weight * line.Agreement * ax;
            y += weight * line.Agreement * ay;
            sum += weight;
        }

        if (sum <= 0) return new([], 0, 0);
        var turn = Elementary.Atan2(y, x);
        var vote = Math.Sqrt((x * x) + (y * y)) / sum;
        List<PictureRegion> outlines = [.. lines.Select(line => Angles.Between(line.Outline.Turn, turn) > Against ? line.Outline.TurnedRound() : line.Outline)];
        turn = Middle(outlines, turn);
        return new([.. Ordered(outlines, turn)], turn, vote);
    }

    // The median by length: a blot or a line of something else beside the mark must not turn it.
    private static double Middle(List<PictureRegion> outlines, double turn)
    {
        var along = outlines.Where(line => Angles.Between(line.Turn, turn) <= Math.PI / 4).OrderBy(line => Angles.Whole(line.Turn - turn)).ToList();
        var (half, sum) = (along.Sum(line => line.Width) / 2, 0.0);
        foreach (var line in along)
        {
            sum += line.Width;
            if (sum >= half) return line.Turn;
        }

        return turn;
    }

    /// <summary>The same mark read the other way up.</summary>
    public MarkLayout TurnedRound()
    {
        var turn = Angles.Whole(Turn + Math.PI);
        return new([.. Ordered([.. Lines.Select(line => line.TurnedRound())], turn)], turn, Vote);
    }

    // From the top down along the common direction; what stands side by side is one row, read from its beginning. Lines across it come last.
    private static List<PictureRegion> Ordered(List<PictureRegion> lines, double turn)
    {
        var (along, down) = ((X: Elementary.Cos(turn), Y: Elementary.Sin(turn)), (X: -Elementary.Sin(turn), Y: Elementary.Cos(turn)));
        double Across(PictureRegion line) => (line.Middle.X * down.X) + (line.Middle.Y * down.Y);
        double Along(PictureRegion line) => (line.Middle.X * along.X) + (line.Middle.Y * along.Y);
        var with = lines.Where(line => Angles.Between(line.Turn, turn) <= Math.PI / 4).OrderBy(Across).ToList();
        var rows = new List<List<PictureRegion>>();
        foreach (var line in with)
        {
            if (rows.Count > 0 && Math.Abs(Across(line) - rows[^1].Average(Across)) < 0.5 * Math.Min(line.Height, rows[^1].Min(each => each.Height))) rows[^1].Add(line);
            else rows.Add([line]);
        }

        return [.. rows.SelectMany(row => row.OrderBy(Along)), .. lines.Where(line => Angles.Between(line.Turn, turn) > Math.PI / 4).OrderBy(Across).ThenBy(Along)];
    }
}
