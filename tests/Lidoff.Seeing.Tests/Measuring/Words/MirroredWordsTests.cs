using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Edges;
using Lidoff.Seeing.Rendering;

namespace Lidoff.Seeing.Tests.Measuring.Words;

/// <summary>A flipped picture is found out by its words, in letters that the program did not draw; a straight or turned one is not accused.</summary>
public sealed class MirroredWordsTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(12)]
    [InlineData(180)]
    public void A_flipped_board_reads_mirrored_and_a_turned_one_does_not(double turn)
    {
        var grey = Printed(Brindle.MainTop() with { TurnDegrees = turn });
        Assert.False(PictureLook.Of(grey).WordsMirrored);
        Assert.True(PictureLook.Of(Flipped(grey, along: true)).WordsMirrored);
        Assert.True(PictureLook.Of(Flipped(grey, along: false)).WordsMirrored);
    }

    [Fact]
    public void Without_words_nothing_is_said_either_way()
    {
        var bare = Grey(Bare(Brindle.MainTop()));
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

    private static Scene Bare(Scene scene) => scene with { Mask = MaskColour.None, Parts = [.. scene.Parts.Select(part => part with { Marks = [] })] };

    /// <summary>The board without a letter of the renderer's, its three large chips printed on in dots.</summary>
    private static GreyPicture Printed(Scene scene)
    {
        var grey = Grey(Bare(scene));
        foreach (var (spot, lines) in new[] { ("U1", new[] { "NP52R", "KEF7L", "6SJ3B" }), ("U2", ["25GRJP", "4PKN9"]), ("U7", ["345B", "CFL7"]) })
        {
            var centre = SceneTruth.Of(scene).Parts.Single(part => part.Part.Spot == spot).Centre;
            var (sin, cos) = (Math.Sin(scene.TurnDegrees * Math.PI / 180), Math.Cos(scene.TurnDegrees * Math.PI / 180));
            for (var line = 0; line < lines.Length; line++)
            {
                var down = 42 * (line - ((lines.Length - 1) / 2.0));
                DotLetters.Print(grey, lines[line], centre.X - (down * sin), centre.Y + (down * cos), scene.TurnDegrees, 3.6);
            }
        }

        return grey;
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
