using System.Globalization;
using System.Text.RegularExpressions;
using Lidoff.Seeing.Composing;
using Lidoff.Seeing.Rendering;
using OpenCvSharp;

namespace Lidoff.Seeing.Tests.Composing;

public sealed class FocusStackTests
{
    private static readonly int[] Right = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10];

    [Fact]
    public void Every_part_is_sharp_and_as_tall_as_it_is()
    {
        using var bench = new Bench();
        FocusBench.Add(bench, Right);
        var made = bench.Make(ComposeMethod.Stack, FocusBench.StepMm).Value;
        Assert.Equal((0, 2.0), made.Heights);
        Assert.True(made.HeightsInMm);
        // Eleven slices whose scale grows by 0.15 % each, ten times: 1.51 %. It is told to a tenth, one of which is 0.4 px at the picture's edge (measured: 1.6).
        var told = Regex.Match(string.Join(' ', made.Says), "The scale changed by ([0-9.]+) %");
        Assert.InRange(double.Parse(told.Groups[1].Value, CultureInfo.InvariantCulture), 1.4, 1.6);
        using var heights = Bench.Opened(made.Second!);
        Assert.Equal(MatType.CV_16U, heights.Depth());
        var truth = SceneTruth.Of(FocusBench.Slice(0)).Parts.ToDictionary(part => part.Part.Spot);
        // Marked tops and ends of passives, from 0.5 to 1.9 mm; half a step is 0.1 mm (measured: 0.08 at most).
        foreach (var spot in new[] { "U1", "U2", "U6", "U7", "C1", "C2", "C3" })
        {
            var at = truth[spot].Centre;
            var box = new Rect((int)at.X - 16, Math.Max(0, (int)at.Y - 12), 32, 24);
            Assert.InRange(Height(heights, box, made), truth[spot].Part.HeightMm - 0.1, truth[spot].Part.HeightMm + 0.1);
        }

        Assert.InRange(Height(heights, new(250, 250, 60, 40), made), -0.1, 0.1);
        using var picture = Bench.Opened(made.Picture);
        using var grey = picture.CvtColor(ColorConversionCodes.BGR2GRAY);
        using var low = Cv2.ImRead(bench.Pictures[0].Path, ImreadModes.Grayscale);
        // The mark of the tallest chip, of one in the middle, and vias on the board: each as crisp as in its own slice, in one picture.
        foreach (var (spot, slice) in new[] { ("U2", 9), ("U1", 4) })
        {
            var at = truth[spot].Centre;
            var box = new Rect((int)at.X - 60, (int)at.Y - 30, 120, 60);
            using var own = Cv2.ImRead(bench.Pictures[slice].Path, ImreadModes.Grayscale);
            // Measured: 1.00 of its own slice where that is sharpest, 0.89 between two slices, whose mean it is there; 3.9 and 4.0 times the slice that is
            // focused on the board.
            Assert.True(Crisp(grey, box) > 0.85 * Crisp(own, box), $"{spot}: {Crisp(grey, box)} against {Crisp(own, box)}");
            Assert.True(Crisp(grey, box) > 3.5 * Crisp(low, box));
        }
    }

    [Theory]
    [InlineData(new[] { 0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10 }, false)]
    [InlineData(new[] { 0, 1, 2, 4, 3, 5, 6, 7, 8, 9, 10 }, true)]
    [InlineData(new[] { 0, 1, 2, 6, 3, 4, 5, 7, 8, 9, 10 }, true)]
    [InlineData(new[] { 6, 7, 8, 9, 10, 0, 1, 2, 3, 4, 5 }, true)]
    public void The_order_of_focus_is_found(int[] given, bool repaired)
    {
        using var bench = new Bench();
        FocusBench.Add(bench, given);
        var (order, changed) = SliceOrder.Of(bench.Pictures, Bench.Quiet.Instance);
        Assert.Equal(repaired, changed);
        // Either way round is an order of focus.
        int[] found = [.. order.Select(i => given[i])];
        Assert.Equal(Right, found[0] == 0 ? found : [.. found.Reverse()]);
    }

    [Fact]
    public void Slices_in_no_order_at_all_are_put_right_and_that_is_said()
    {
        const string order = "4, 8, 2, 6, 10, 1, 9, 5, 11, 3, 7";
        using var bench = new Bench();
        FocusBench.Add(bench, [5, 2, 9, 0, 7, 3, 10, 1, 6, 4, 8]);
        var made = bench.Make(ComposeMethod.Stack).Value;
        Assert.Equal($"The slices did not come in the order of their focus and were put into it: {order} of the given ones.", made.Says[0]);
        Assert.Equal([.. order.Split(", ").Select(i => bench.Pictures[int.Parse(i, System.Globalization.CultureInfo.InvariantCulture) - 1].Sha256)], made.Inputs);
        Assert.Equal((1.0, 11.0), made.Heights);
        Assert.Equal((0, 0), made.FirstAt);
    }

    [Fact]
    public void A_stack_taken_downwards_is_as_good()
    {
        using var bench = new Bench();
        FocusBench.Add(bench, Right.Reverse().Take(6));
        var made = bench.Make(ComposeMethod.Stack, -FocusBench.StepMm).Value;
        Assert.DoesNotContain(made.Says, say => say.StartsWith("The slices did not", StringComparison.Ordinal));
        Assert.Equal((0, -1.0), made.Heights);
    }

    [Fact]
    public void What_is_no_stack_is_refused()
    {
        using var same = new Bench();
        for (var k = 0; k < 4; k++) same.Add(LightBench.Picture(30, k), LightBench.Width, LightBench.Height);
        Assert.StartsWith("These pictures are no focus stack: ", same.Make(ComposeMethod.Stack).Faults[0].Say, StringComparison.Ordinal);
        using var sizes = new Bench();
        FocusBench.Add(sizes, [0, 1]);
        sizes.Add(LightBench.Picture(30, 1), LightBench.Width, LightBench.Height);
        Assert.Equal(
            "“p03.jpg” has 640 × 420 px, the first picture 720 × 540. Pictures of one camera place have one size: take out what does not belong, or take them anew at one setting.",
            sizes.Make(ComposeMethod.Stack).Faults[0].Say);
        Assert.Equal("A focus stack takes at least 3 slices; 2 were given.", sizes.Make(ComposeMethod.Stack, order: [0, 1]).Faults[0].Say);
        Assert.Equal("“p01.jpg” was given twice. Take each picture once.", sizes.Make(ComposeMethod.Stack, order: [0, 1, 0]).Faults[0].Say);
    }

    private static double Height(Mat heights, Rect box, Composition made)
    {
        using var part = heights[box].Clone();
        part.GetArray(out ushort[] values);
        Array.Sort(values);
        return values[values.Length / 2] / 65535.0 * made.Heights!.Value.To;
    }

    private static double Crisp(Mat grey, Rect box)
    {
        using var edges = new Mat();
        Cv2.Laplacian(grey[box], edges, MatType.CV_32F);
        Cv2.MeanStdDev(edges, out _, out var spread);
        return spread.Val0;
    }
}
