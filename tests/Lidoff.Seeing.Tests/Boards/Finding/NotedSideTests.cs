using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Boards.Finding;
using Lidoff.Seeing.Boards.Finding.Matching;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Tests.Boards.Finding;

/// <summary>Sides that a person noted against what round marks say: places made up here, as a table's pattern or a board's holes would show them.</summary>
public sealed class NotedSideTests
{
    private static readonly PictureFrame Frame = new(1600, 1200);

    [Fact]
    public void What_lies_as_from_one_side_does_not_overrule_two_sides_noted()
    {
        var (table, one, other) = (Places(1, 14), Places(2, 22), Places(3, 22));
        var match = BoardMatcher.Match(("top", Marks([.. table, .. one])), ("bottom", Marks([.. table.Select(Moved), .. other])), true);
        Assert.Equal(
            "“bottom” fits on “top” only as from the same side (14 holes), although they are noted as two sides, and that is too little to go against the notes: something beside the board may be the same in both. "
            + "Nothing was changed; correct the side where it is wrong, or point at landmarks by hand (K).",
            match.Faults[0].Say);
    }

    [Fact]
    public void A_way_that_agrees_with_the_sides_noted_comes_first()
    {
        var (table, holes) = (Places(1, 22), Places(2, 12));
        var match = BoardMatcher.Match(("top", Marks([.. table, .. holes])), ("bottom", Marks([.. table.Select(Moved), .. holes.Select(Turned)])), true);
        Assert.True(match.Value.Mirrored);
        Assert.Equal(12, match.Value.Pairs.Count);
    }

    [Fact]
    public void Few_holes_that_mirror_do_not_overrule_one_side_noted_and_many_do()
    {
        var (few, many, one, other) = (Places(4, 8), Places(5, 20), Places(2, 15), Places(3, 15));
        Assert.Equal(
            "“b” fits on “a” only mirrored (8 holes), although they are noted as one side, and that is too little to go against the notes: something beside the board may be the same in both. "
            + "Nothing was changed; correct the side where it is wrong, or point at landmarks by hand (K).",
            BoardMatcher.Match(("a", Marks([.. few, .. one])), ("b", Marks([.. few.Select(Turned), .. other])), false).Faults[0].Say);
        Assert.Equal(
            "“b” lies mirrored to “a”, although both are noted as one side: one of them shows the other side, or was mirrored before it came here.",
            Assert.Single(BoardMatcher.Match(("a", Marks([.. many, .. one])), ("b", Marks([.. many.Select(Turned), .. other])), false).Value.Says));
    }

    [Fact]
    public void A_note_is_overruled_by_a_board_that_lies_mirrored_though_a_few_marks_lie_as_noted()
    {
        var (table, holes) = (Places(1, 8), Places(2, 24));
        Assert.Equal(
            "“b” lies mirrored to “a”, although both are noted as one side: one of them shows the other side, or was mirrored before it came here.",
            Assert.Single(BoardMatcher.Match(("a", Marks([.. table, .. holes])), ("b", Marks([.. table.Select(Moved), .. holes.Select(Turned)])), false).Value.Says));
    }

    // Two rows of twelve holes and seven that are in no row: one hole on the rows fit as well, eleven and eleven of them.
    [Fact]
    public void Holes_that_are_in_no_row_tell_one_hole_on_from_none()
    {
        List<PicturePoint> rows = [.. Enumerable.Range(0, 12).SelectMany(i => new PicturePoint[] { new(300 + (50 * i), 400), new(330 + (50 * i), 700) })];
        var (alone, one, other) = (Places(6, 7), Places(2, 9), Places(3, 9));
        var laid = BoardMatcher.Match(("a", Marks([.. rows, .. alone, .. one])), ("b", Marks([.. rows.Concat(alone).Select(Turned), .. other])), true).Value;
        Assert.Equal(31, laid.Pairs.Count);
        Assert.InRange(laid.Map.Map(new(800, 600)).DistanceTo(Turned(new(800, 600))), 0, 1);
    }

    [Fact]
    public void Pictures_that_do_not_look_alike_are_not_taken_for_one_side_where_no_side_is_noted()
    {
        var (table, one, other) = (Places(1, 14), Places(2, 12), Places(3, 12));
        Assert.Equal(
            "“b” fits on “a” as from the same side (14 holes), but the two do not look alike there: something beside the board may be the same in both. Nothing was changed; say which side each picture shows, or point at landmarks by hand (K).",
            BoardMatcher.Match(("a", Marks([.. table, .. one])), ("b", Marks([.. table.Select(Moved), .. other])), null).Faults[0].Say);
    }

    private static List<PicturePoint> Places(int seed, int count)
    {
        var random = new Random(seed);
        return [.. Enumerable.Range(0, count).Select(_ => new PicturePoint(100 + (1400 * random.NextDouble()), 100 + (1000 * random.NextDouble())))];
    }

    private static PicturePoint Moved(PicturePoint at) => new(at.X + 8, at.Y - 11);

    private static PicturePoint Turned(PicturePoint at) => new(1600 - at.X, at.Y + 5);

    private static PictureMarks Marks(List<PicturePoint> places) => new(Frame, [.. places.Select(at => new FoundMark(at, 8, 0.1, MarkSort.Dark, 0.9))]);
}
