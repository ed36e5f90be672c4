using Lidoff.Seeing.Boards.Finding;
using Lidoff.Seeing.Boards.Finding.Matching;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Edges;
using Lidoff.Seeing.Rendering;
using Lidoff.Seeing.Rendering.Invented;

namespace Lidoff.Seeing.Tests.Boards.Finding;

/// <summary>Pictures laid on one another without a click, on rendered boards with known pose.</summary>
public sealed class MatchedBoardTests(ITestOutputHelper output)
{
    // The project's target for two sides of boards 40 mm wide.
    private const double TargetUm = 50;

    // Four in every run, for time; more by LIDOFF_BOARDS.
    private static int Boards { get; } = int.TryParse(Environment.GetEnvironmentVariable("LIDOFF_BOARDS"), out var many) ? many : 4;

    [Fact]
    public void Both_sides_lie_on_one_another_within_fifty_micrometres_without_a_click()
    {
        var (found, wrong, all, agree) = (0, 0, new List<double>(), new List<int>());
        for (var seed = 1; seed <= Boards; seed++)
        {
            var board = new HoleBoard(seed);
            var (top, bottom) = (board.Take(false), board.Take(true));
            var match = BoardMatcher.Match(("top", top.Marks()), ("bottom", bottom.Marks()), seed % 2 == 0 ? null : true);
            if (!match.TryValue(out var laid))
            {
                output.WriteLine($"{seed}: {match.Faults[0].Say}");
                continue;
            }

            var ums = Ums(board, top, bottom, laid);
            if (ums.Max() > 500 || !laid.Mirrored) wrong++;
            else found++;
            all.AddRange(ums);
            agree.Add(laid.Pairs.Count);
            output.WriteLine($"{seed}: {laid.Pairs.Count} of {laid.Of}, rest {laid.RestPx:0.00} px, log odds {laid.LogOdds:0}, likeness {laid.Likeness:0.00}, worst {ums.Max():0} µm, bends {top.Bend:0.0000} {bottom.Bend:0.0000}");
        }

        all.Sort();
        output.WriteLine($"{found} of {Boards} found, {wrong} wrong; agreeing {agree.Min()} to {agree.Max()}; median {all[all.Count / 2]:0.0} µm, 99 % {all[all.Count * 99 / 100]:0.0} µm, largest {all[^1]:0.0} µm of {all.Count}");
        Assert.Equal(0, wrong);
        Assert.InRange(found, Boards * 9 / 10, Boards);
        Assert.InRange(all[^1], 0, TargetUm);
    }

    [Fact]
    public void Different_boards_are_refused_with_both_numbers()
    {
        var taken = 0;
        for (var seed = 1; seed <= Boards; seed++)
        {
            var (one, other) = (new HoleBoard(seed), new HoleBoard(seed + 400));
            var match = BoardMatcher.Match(("one", one.Take(false).Marks()), ("other", other.Take(seed % 2 == 0).Marks()), null);
            if (match.TryValue(out var laid)) { taken++; output.WriteLine($"{seed}: taken for one, {laid.Pairs.Count} of {laid.Of}, log odds {laid.LogOdds:0}"); }
            else Assert.Matches("^“one” and “other” do not lie on one board: (none|[0-9]+) of [0-9]+ holes agree, which accident does as well", match.Faults[0].Say);
        }

        Assert.Equal(0, taken);
    }

    [Fact]
    public void Symmetric_holes_are_told_and_none_is_chosen()
    {
        for (var seed = 1; seed <= Math.Max(2, Boards / 3); seed++)
        {
            var board = new HoleBoard(seed, symmetric: true);
            var match = BoardMatcher.Match(("top", board.Take(false).Marks()), ("bottom", board.Take(true).Marks()), true);
            Assert.False(match.Ok, match.TryValue(out var laid) ? $"{seed}: {laid.Pairs.Count} agree" : "");
            Assert.Matches("^“bottom” fits on “top” in 2 ways: from the other side turned by -?[0-9]+° \\([0-9]+ holes\\), from the other side turned by -?[0-9]+°", match.Faults[0].Say);
        }
    }

    [Fact]
    public void Two_pictures_of_one_side_and_a_flipped_one_are_told_apart()
    {
        for (var seed = 1; seed <= Math.Max(2, Boards / 3); seed++)
        {
            var board = new HoleBoard(seed + 50);
            var (one, other) = (board.Take(false, turn: 4), board.Take(false, turn: 150));
            var laid = BoardMatcher.Match(("one", one.Marks()), ("other", other.Marks()), false).Value;
            Assert.False(laid.Mirrored);
            output.WriteLine($"{seed}: {laid.Pairs.Count} of {laid.Of}, rest {laid.RestPx:0.00}, worst {Ums(board, one, other, laid).Max():0} µm, bends {one.Bend:0.0000} {other.Bend:0.0000}, tilts {one.Scene.TiltDegrees:0} {other.Scene.TiltDegrees:0}");
            Assert.InRange(Ums(board, one, other, laid).Max(), 0, TargetUm);
            // 150° against 4°.
            Assert.InRange(laid.TurnDegrees, 144, 148);
            Assert.Matches("^“other” is turned by 14[4-8]° clockwise against “one”.$", Assert.Single(laid.Says));
            var flipped = BoardMatcher.Match(("one", one.Marks()), ("other", other.Marks(flipped: true)), null).Value;
            Assert.True(flipped.Mirrored);
            output.WriteLine($"{seed}: likeness {laid.Likeness:0.00}, flipped {flipped.Likeness:0.00}");
            Assert.Contains("“other” shows the same side as “one”, mirrored: one of the two was flipped before it came here.", flipped.Says);
        }
    }

    // The demo's main board shares few holes between its sides: what a first user tries must not hang by one of them.
    [Fact]
    public void The_two_sides_of_the_demo_lie_on_one_another()
    {
        static PictureMarks Marks(string shot)
        {
            var rendered = SceneRenderer.Render(BrindleShots.Named(shot).Scene);
            var (width, height) = (rendered.StoredWidth, rendered.StoredHeight);
            var values = new float[width * height];
            for (var i = 0; i < values.Length; i++) values[i] = ((299 * rendered.Pixels[3 * i]) + (587 * rendered.Pixels[(3 * i) + 1]) + (114 * rendered.Pixels[(3 * i) + 2])) / 1000f;
            return PictureMarks.Of(new GreyPicture(width, height, values, 1), new PictureFrame(width, height));
        }

        var found = 0;
        foreach (var (top, bottom) in new[] { ("", ""), ("", "-tilted"), ("", "-raking"), ("-tilted", ""), ("-tilted", "-tilted"), ("-tilted", "-raking"), ("-raking", ""), ("-raking", "-tilted"), ("-raking", "-raking") })
        {
            var match = BoardMatcher.Match(("top", Marks($"brindle-main-top{top}.png")), ("bottom", Marks($"brindle-main-bottom{bottom}.png")), true);
            output.WriteLine($"top{top} on bottom{bottom}: " + (match.TryValue(out var laid) ? $"{laid.Pairs.Count} of {laid.Of}, log odds {laid.LogOdds:0}" : match.Faults[0].Say));
            if (match.Ok) found++;
        }

        Assert.InRange(found, 7, 9);
    }

    [Fact]
    public void A_side_noted_wrongly_is_told()
    {
        var board = new HoleBoard(71);
        var laid = BoardMatcher.Match(("a", board.Take(false, turn: 0).Marks()), ("b", board.Take(true, turn: 0).Marks()), false).Value;
        Assert.Equal("“b” lies mirrored to “a”, although both are noted as one side: one of them shows the other side, or was mirrored before it came here.", Assert.Single(laid.Says));
    }

    // The renderer prints its caption beside the board the same way round on both sides, as a ruler or a patterned table would show.
    [Fact]
    public void What_is_the_same_beside_the_board_is_not_taken_for_it()
    {
        var board = new HoleBoard(91);
        var (top, bottom) = (board.Take(false, turn: 2, title: "BOARD 0680-98 OB 800 Q0 608"), board.Take(true, turn: -3, title: "BOARD 0680-98 OB 800 Q0 608"));
        var laid = BoardMatcher.Match(("a", top.Marks()), ("b", bottom.Marks()), true).Value;
        Assert.True(laid.Mirrored);
        Assert.InRange(Ums(board, top, bottom, laid).Max(), 0, TargetUm);
        // Without the sides it may be open, but is never taken for a picture of one side.
        var open = BoardMatcher.Match(("a", top.Marks()), ("b", bottom.Marks()), null);
        output.WriteLine(open.TryValue(out var chosen) ? $"{chosen.Pairs.Count}" : open.Faults[0].Say);
        Assert.True(!open.Ok || open.Value.Mirrored);
    }

    [Fact]
    public void The_same_marks_give_the_same_answer()
    {
        var board = new HoleBoard(81);
        var (top, bottom) = (board.Take(false).Marks(), board.Take(true).Marks());
        var (one, again) = (BoardMatcher.Match(("a", top), ("b", bottom), null).Value, BoardMatcher.Match(("a", top), ("b", bottom), null).Value);
        Assert.Equal(one.Map.Matrix, again.Map.Matrix);
        Assert.Equal(one.Pairs, again.Pairs);
    }

    [Fact]
    public void A_picture_with_too_little_in_it_is_refused()
    {
        var board = new HoleBoard(82);
        var none = new PictureMarks(new(100, 100), []);
        Assert.Equal(
            "“b” shows no holes that stand out, and seven are needed. Take it nearer, sharper, or with light from all sides; or point at landmarks by hand (K).",
            BoardMatcher.Match(("a", board.Take(false).Marks()), ("b", none), null).Faults[0].Say);
    }

    // Check points over the whole board, most of which are no holes.
    private static List<double> Ums(HoleBoard board, HoleBoard.Shot first, HoleBoard.Shot second, BoardMatch laid)
    {
        var ums = new List<double>();
        for (var i = 0; i < 20; i++)
        {
            var (x, y) = (2 + ((HoleBoard.WidthMm - 4) * board.Even()), 2 + ((HoleBoard.HeightMm - 4) * board.Even()));
            ums.Add(laid.Map.Map(first.Show(x, y)).DistanceTo(second.Show(x, y)) / second.Scene.PxPerMm * 1000);
        }

        return ums;
    }
}
