using Lidoff.Seeing.Reading.Finding;

namespace Lidoff.Seeing.Tests.Reading.Finding;

/// <summary>Marks that are no text: known to the map, standing out of the body, or neither.</summary>
public sealed class EmblemFinderTests
{
    private static readonly PictureRegion Body = PictureRegion.Box(20, 20, 340, 300);
    private static readonly PictureRegion Line = PictureRegion.Box(60, 200, 200, 30);

    private static DrawnMaps Maps() => new DrawnMaps(96, 96).Body(Body).Line(160, 215, 200, 30);

    // Ground with a fall of light and a little grain, a line of bars, and blocks of ink.
    private static FinderSheet Sheet(params PictureRegion[] blocks)
    {
        var pixels = new float[384 * 384];
        for (var i = 0; i < pixels.Length; i++)
        {
            var at = new Evidence.Pictures.PicturePoint((i % 384) + 0.5, (i / 384) + 0.5);
            var ink = (Line.Holds(at) && i % 384 % 16 < 8) || blocks.Any(block => block.Holds(at));
            pixels[i] = (float)((ink ? 2 : -0.4) + (0.3 * at.X / 384) + (0.05 * Math.Sin(i * 12.9898)));
        }

        return new(pixels, 384, 384, 384, 384, PictureRegion.Box(0, 0, 384, 384));
    }

    private static IReadOnlyList<FoundEmblem> Find(DrawnMaps maps, params PictureRegion[] blocks) => EmblemFinder.Find(Sheet(blocks), maps.Draw(), Body, [Line]);

    [Fact]
    public void What_the_map_does_not_know_stands_out_of_the_body()
    {
        var found = Assert.Single(Find(Maps(), PictureRegion.Box(100, 60, 44, 40)));
        Assert.InRange(found.Outline.Middle.DistanceTo(new(122, 80)), 0, 2);
        Assert.Equal((44.0, 40.0), (Math.Round(found.Outline.Width), Math.Round(found.Outline.Height)));
        // Two pieces near to one another are one mark.
        found = Assert.Single(Find(Maps(), PictureRegion.Box(100, 60, 20, 40), PictureRegion.Box(125, 60, 20, 40)));
        Assert.Equal(45, found.Outline.Width, 1.0);
        // One that the map knows in part is completed, and stays as sure as the map is.
        found = Assert.Single(Find(Maps().Logo(110, 70, 20), PictureRegion.Box(100, 60, 44, 40)));
        Assert.Equal(44, found.Outline.Width, 4.0);
        Assert.NotEqual(0.7, found.P);
    }

    [Fact]
    public void Specks_bars_the_dot_the_text_and_what_lies_beside_the_body_are_none()
    {
        Assert.Empty(Find(Maps()));
        Assert.Empty(Find(Maps(), PictureRegion.Box(100, 60, 8, 8)));
        Assert.Empty(Find(Maps(), PictureRegion.Box(60, 60, 240, 6)));
        Assert.Empty(Find(Maps().Dot(110, 80, 12), PictureRegion.Box(98, 68, 24, 24)));
        Assert.Empty(EmblemFinder.Find(Sheet(PictureRegion.Box(250, 330, 44, 40)), Maps().Draw(), PictureRegion.Box(0, 0, 384, 384), [Line]));
        // In many places it is glare.
        Assert.Empty(Find(Maps(), PictureRegion.Box(40, 50, 30, 30), PictureRegion.Box(140, 50, 30, 30), PictureRegion.Box(240, 50, 30, 30)));
    }
}
