namespace Lidoff.Seeing.Reading.Finding;

/// <summary>Joins pieces that are one line: of one direction and height, one behind the other with a gap that is small for their height. Choices of ours.</summary>
internal static class LineJoining
{
    private const double MostTurn = 0.2;
    private const double MostHeightRatio = 1.5;
    private const double MostOff = 0.35;

    // Of the height: closer pieces are one line; up to the wider gap where the map of whole lines goes on between.
    private const double NearGap = 0.6;
    private const double WideGap = 1.6;

    public static List<FoundLine> Join(FinderMaps maps, List<FoundLine> lines)
    {
        for (var again = true; again;)
        {
            again = false;
            for (var i = 0; i < lines.Count && !again; i++)
            {
                for (var j = 0; j < lines.Count && !again; j++)
                {
                    if (i == j || !Follows(maps, lines[i], lines[j])) continue;
                    var both = Together(lines[i], lines[j]);
                    lines.RemoveAt(Math.Max(i, j));
                    lines[Math.Min(i, j)] = both;
                    again = true;
                }
            }
        }

        return lines;
    }

    private static bool Follows(FinderMaps maps, FoundLine first, FoundLine second)
    {
        var (a, b) = (first.Outline, second.Outline);
        // A piece of one or two characters tells its own direction badly; the longer one's counts, and which way it runs.
        var lead = a.Width >= b.Width ? a : b;
        var off = Angles.Between(a.Turn, b.Turn);
        var shorter = Math.Min(a.Width / a.Height, b.Width / b.Height);
        if (off > (shorter < 1.5 ? 0.6 : MostTurn) || Math.Max(a.Height, b.Height) > MostHeightRatio * Math.Min(a.Height, b.Height)) return false;
        var height = Math.Min(a.Height, b.Height);
        var ((ax, ay), (dx, dy)) = (lead.Along, lead.Down);
        var (x, y) = (b.Middle.X - a.Middle.X, b.Middle.Y - a.Middle.Y);
        var gap = (x * ax) + (y * ay) - ((a.Width + b.Width) / 2);
        if (Math.Abs((x * dx) + (y * dy)) > MostOff * height || gap < -0.5 * height || gap > WideGap * height) return false;
        if (gap <= NearGap * height) return true;
        var (end, start) = (first.End(1), second.End(-1));
        var least = 1.0;
        for (var k = 1; k < 8; k++) least = Math.Min(least, maps.LineAt(end.X + ((start.X - end.X) * k / 8), end.Y + ((start.Y - end.Y) * k / 8)));
        return least > 0.3;
    }

    private static FoundLine Together(FoundLine first, FoundLine second)
    {
        var (a, b) = (first.Outline.Width / (first.Outline.Width + second.Outline.Width), second.Outline.Width / (first.Outline.Width + second.Outline.Width));
        return new(PictureRegion.InARow(first.Outline, second.Outline), (a * first.Share) + (b * second.Share), (a * first.Agreement) + (b * second.Agreement));
    }
}
