using System.Collections.Concurrent;
using Lidoff.Seeing.Rendering;
using Lidoff.Seeing.Rendering.Invented;

namespace Lidoff.Seeing.Tests.Rendering.Invented;

/// <summary>The demo's pictures show what their truth says; both are looked at in the pixels.</summary>
public sealed class BrindleShotsTests
{
    // The least share of letters that each chip by itself must show, not all chips together: issue 3.
    private const double Readable = 0.8;

    // Fewest pixels a letter's height needs to be read from a picture: common practice, no source.
    private const double LeastCapPx = 12;

    // A picture is rendered once for all tests of this run.
    private static readonly ConcurrentDictionary<string, PictureReader> Readers = new(StringComparer.Ordinal);

    public static TheoryData<string, string> Chips()
    {
        var chips = new TheoryData<string, string>();
        foreach (var shot in BrindleShots.All.Where(shot => shot.Name.EndsWith("-raking-left.png", StringComparison.Ordinal))) chips.Add(shot.Specimen, shot.About);
        return chips;
    }

    [Theory]
    [MemberData(nameof(Chips))]
    public void Each_chip_shows_four_fifths_of_its_mark_in_its_best_light(string specimen, string spot)
    {
        var part = Part(Close(specimen, spot).First());
        var truth = string.Concat(part.Marks);
        Assert.True(truth.Length > 0);
        var said = new List<string>();
        foreach (var shot in Close(specimen, spot))
        {
            var cap = Math.Min(0.84 * part.LengthMm / part.Marks.Max(line => line.Length), 0.62 * part.WidthMm / (part.Marks.Count * 1.5)) * shot.Scene.PxPerMm;
            Assert.True(cap >= LeastCapPx, $"{cap:0.0} px");
            var read = string.Concat(Look(shot).Mark(part));
            if (read.Zip(truth).Count(pair => pair.First == pair.Second) >= Readable * truth.Length) return;
            said.Add($"{shot.Light}: {read}");
        }

        Assert.Fail($"{truth} was read as {string.Join("; ", said)}");
    }

    // Worn from its right end by half: flat light shows the colour that is left, a low one the groove that rubbing spares for longer.
    [Fact]
    public void A_worn_mark_is_read_under_low_light_and_not_under_flat()
    {
        var read = Close("A", "U3").ToDictionary(shot => shot.Light, shot => string.Concat(Look(shot).Mark(Part(shot))));
        Assert.Equal("3028", read["flat"][..4]);
        Assert.NotEqual("C7", read["flat"][4..]);
        Assert.Equal("3028C7", read["low, from the left"]);
    }

    [Theory]
    [MemberData(nameof(Chips))]
    public void As_many_leads_are_drawn_as_the_part_has(string specimen, string spot)
    {
        var shot = Close(specimen, spot).First();
        var part = Part(shot);
        var each = (part.Ways - (2 * part.EndLeads)) / part.LeadSides;
        if (part.LeadMm <= 0)
        {
            Assert.Equal(0, part.Ways);
            return;
        }

        int[] sides = part.LeadSides == 4 ? [each, each, each, each] : part.EndLeads > 0 ? [each, part.EndLeads, each, part.EndLeads] : [each, each];
        Assert.Equal(part.Ways, sides.Sum());
        Assert.Equal(sides, Look(shot).Leads(part));
    }

    // Leads as their makers' data sheets have them (from memory): the 48-lead QFN, the 8-lead SOIC, the 10-lead 2 × 2 mm and the 12-lead 2 × 3 mm
    // WSON, the 14-land 3 × 5 mm LGA of the accelerometer, the six-lead SOT-23.
    [Theory]
    [InlineData("U1", 48)]
    [InlineData("U2", 8)]
    [InlineData("U5", 10)]
    [InlineData("U6", 12)]
    [InlineData("U7", 14)]
    [InlineData("U8", 6)]
    public void Chips_have_the_leads_of_the_parts_they_are_named_after(string spot, int leads) => Assert.Equal(leads, Part(Close("A", spot).First()).Ways);

    private static IEnumerable<Shot> Close(string specimen, string spot) => BrindleShots.All.Where(shot => shot.Specimen == specimen && shot.About == spot);

    private static PictureReader Look(Shot shot) => Readers.GetOrAdd(shot.Name, _ => new(shot.Scene));

    private static ScenePart Part(Shot shot) => shot.Scene.Parts.Single(part => part.Spot == shot.About);
}
