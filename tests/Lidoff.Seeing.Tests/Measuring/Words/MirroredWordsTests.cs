using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Edges;
using Lidoff.Seeing.Rendering;

namespace Lidoff.Seeing.Tests.Measuring.Words;

/// <summary>A flipped picture is found out by its words; a straight or turned one is not accused.</summary>
public sealed class MirroredWordsTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(12)]
    [InlineData(180)]
    public void A_flipped_board_reads_mirrored_and_a_turned_one_does_not(double turn)
    {
        var grey = Grey(Brindle.MainTop() with { TurnDegrees = turn });
        Assert.False(PictureLook.Of(grey).WordsMirrored);
        Assert.True(PictureLook.Of(Flipped(grey, along: true)).WordsMirrored);
        Assert.True(PictureLook.Of(Flipped(grey, along: false)).WordsMirrored);
    }

    [Fact]
    public void Without_words_nothing_is_said_either_way()
    {
        var scene = Brindle.MainTop();
        var bare = Grey(scene with { Mask = MaskColour.None, Parts = [.. scene.Parts.Select(part => part with { Marks = [] })] });
        Assert.False(PictureLook.Of(bare).WordsMirrored);
        Assert.False(PictureLook.Of(Flipped(bare, along: true)).WordsMirrored);
    }

    [Fact]
    public void The_warning_names_what_was_seen()
    {
        var job = new MeasureJob { Image = "x", References = [new(new(10, 10), new(900, 10), 30)], Targets = [new("t", new TargetLength("t", new(10, 20), new(800, 20)))] };
        var warning = Assert.Single(Measurement.Run(job, new(1600, 1200), new(null, true)).Value[0].Length.Value.Warnings);
        Assert.Equal("mirrored", warning.Code);
        Assert.StartsWith("The words in the picture read mirrored", warning.Say, StringComparison.Ordinal);
    }

    private static GreyPicture Grey(Scene scene)
    {
        var pixels = SceneRenderer.Render(scene).Pixels;
        return new(scene.Width, scene.Height, [.. Enumerable.Range(0, scene.Width * scene.Height).Select(i => ((299 * pixels[3 * i]) + (587 * pixels[(3 * i) + 1]) + (114 * pixels[(3 * i) + 2])) / 1000f)], 1);
    }

    private static GreyPicture Flipped(GreyPicture grey, bool along) => grey with
    {
        Values = [.. Enumerable.Range(0, grey.Values.Length).Select(i => along ? grey.At(grey.Width - 1 - (i % grey.Width), i / grey.Width) : grey.At(i % grey.Width, grey.Height - 1 - (i / grey.Width)))],
    };
}
