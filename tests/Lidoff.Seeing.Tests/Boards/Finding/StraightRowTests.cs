using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Boards.Finding;
using Lidoff.Seeing.Boards.Finding.Matching;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Tests.Boards.Finding;

/// <summary>What two different boards share by their parts alone.</summary>
public sealed class StraightRowTests
{
    private static readonly PictureFrame Frame = new(1600, 1200);

    [Fact]
    public void A_row_of_leads_and_three_marks_are_not_one_board_and_with_six_they_are()
    {
        List<PicturePoint> row = [.. Enumerable.Range(0, 12).Select(i => new PicturePoint(500 + (26 * i), 640 + (3 * i)))];
        List<PicturePoint> beside = [new(120, 150), new(1480, 260), new(1390, 1080), new(210, 1010), new(830, 190), new(1010, 960)];
        Assert.Contains("do not lie on one board", Matched([.. row, .. beside.Take(3)]).Faults[0].Say, StringComparison.Ordinal);
        Assert.Equal(18, Matched([.. row, .. beside]).Value.Pairs.Count);
    }

    [Fact]
    public void A_header_that_two_boards_have_is_not_one_board()
    {
        // Two rows of ten holes, 2.54 mm apart each way, and one hole more that agrees by accident: of 253 pairs of photographed boards one had been taken for one by 14 such holes.
        List<PicturePoint> header = [.. Enumerable.Range(0, 20).Select(i => new PicturePoint(500 + (40 * (i % 10)), 640 + (40 * (i / 10)))), new(1390, 1080)];
        Assert.Contains("do not lie on one board", Matched(header).Faults[0].Say, StringComparison.Ordinal);
    }

    // One side, turned over; what is on either board besides is not on the other.
    private static Numbers.Failing.Outcome<BoardMatch> Matched(List<PicturePoint> shared)
    {
        var (one, other) = (Scattered(2), Scattered(3));
        return BoardMatcher.Match(("a", Marks([.. shared, .. one])), ("b", Marks([.. shared.Select(at => new PicturePoint(1600 - at.X, at.Y + 7)), .. other])), true);
    }

    private static List<PicturePoint> Scattered(int seed)
    {
        var random = new Random(seed);
        return [.. Enumerable.Range(0, 14).Select(_ => new PicturePoint(60 + (1480 * random.NextDouble()), 60 + (1080 * random.NextDouble())))];
    }

    private static PictureMarks Marks(List<PicturePoint> places) => new(Frame, [.. places.Select(at => new FoundMark(at, 8, 0.1, MarkSort.Dark, 0.9))]);
}
