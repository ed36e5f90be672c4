using Lidoff.Demo;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Store;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Rendering;
using Lidoff.Seeing.Rendering.Invented;
using Lidoff.Telling.Claims;
using Lidoff.Tracing.Kinds;
using Lidoff.Weighing.Questions;
using Lidoff.Weighing.Quarrels;

namespace Lidoff.Tests.Demo;

/// <summary>The demo is laid out whole, and what it says agrees with what was rendered.</summary>
[Collection("the demo")]
public sealed class DemoTests(LaidDemo demo)
{
    [Fact]
    public void It_is_laid_out_once_and_says_what_was_planted()
    {
        var dossier = demo.Dossier;
        var entries = dossier.Session.View.Entries.Count;
        Assert.False(DemoDossier.LayOut(demo.Seat, demo.Workspace).Value);
        dossier.Refresh();
        Assert.Equal(entries, dossier.Session.View.Entries.Count);
        Assert.DoesNotContain(dossier.Session.View.Entries, entry => entry.Fate is EntryFate.Refused or EntryFate.Unknown);

        Assert.Equal("nRF52832", dossier.Model.Identity("U1").Says);
        Assert.Equal("not in any list", dossier.Model.Identity("U4").Says);
        // Its mark was misread (5 for S), and its identity register says the same part.
        Assert.Equal("W25Q32", dossier.Model.Identity("U2").Says);
        Assert.Equal("RV-3028-C7", dossier.Model.Identity("U3").Says);
        Assert.Equal("BQ24040DSQR", dossier.Model.Identity("U5").Says);
        Assert.Equal("TPS62740DSSR", dossier.Model.Identity("U6").Says);
        Assert.Equal("ADXL345", dossier.Model.Identity("U7").Says);
        Assert.Equal("DW01A", dossier.Model.Identity("U8").Says);
        var states = dossier.Claims.ToDictionary(claim => claim.Name, claim => claim.State);
        Assert.Equal(ClaimState.Outside, states["C3"]);
        Assert.Equal(ClaimState.Outside, states["C7"]);
        Assert.Equal(ClaimState.Lost, states["C6"]);
        Assert.Equal(9, states.Count);
        // The least that issue 3 asks of the demo.
        var view = dossier.Session.View;
        Assert.True(BrindleShots.All.Count >= 48);
        Assert.Equal(BrindleShots.All.Count, view.Live<PictureSighting>().Count);
        Assert.True(view.Live<TouchSighting>().Count >= 40);
        Assert.True(view.Live<SpotSighting>().Select(spot => spot.Value.Spot).Distinct().Count() >= 20);
        Assert.True(view.Live<QuestionAsked>().Count >= 5);
        Assert.Equal(["343B", "345B"], view.Live<MarkSighting>().Where(mark => mark.Value.Spot == "U7").Select(mark => mark.Value.Lines[0].Text).Order(StringComparer.Ordinal));
        var quarrel = Assert.Single(QuarrelBook.Find(dossier.Session.View, dossier.Model));
        Assert.Equal("width of S1 cannot be 3.020 ± 0.020 mm and 3.200 ± 0.010 mm.", quarrel.Say);
        Assert.True(Verifier.Run(demo.Workspace).Value.Ok);

        // The ways of the rendered cable stand 1.25 mm apart, and the reckoning bound to the measured connector finds that.
        var pitch = dossier.Model.Value("reckoning:R5");
        Assert.InRange(Brindle.MainTop().Parts.Single(part => part.Spot == "J1").PitchMm, pitch.Low * 1e3, pitch.High * 1e3);
        var spots = dossier.Session.View.Live<SpotSighting>().Select(spot => spot.Value.Spot).ToList();
        // Holes and vias are no spots; every other part of the upper sides is one.
        Assert.All(Brindle.MainTop().Parts.Concat(Brindle.LampTop().Parts).Where(part => part.Shape != PartShape.Hole), part => Assert.Contains(part.Spot, spots));
        Assert.All(dossier.Session.View.Live<SpotSighting>(), spot => Assert.NotEmpty(spot.Value.Role));
    }

    [Fact]
    public void Lengths_clicked_in_its_pictures_hold_the_rendered_truth()
    {
        var dossier = demo.Dossier;
        var truth = new[] { Brindle.MainTop(), Brindle.MainBottom(), Brindle.LampTop() }.SelectMany(board => board.Parts).Where(part => part.Shape != PartShape.Hole).ToDictionary(part => part.Spot);
        var clicked = dossier.Session.View.Live<LengthSighting>().Where(length => length.Value.InPicture is not null).Select(length => length.Value).ToList();
        Assert.Equal(20, clicked.Count);
        var held = clicked.Count(length =>
        {
            var part = truth[length.Spot];
            var reading = dossier.Model.Length(length.Spot, length.What).Readings.Single(each => each.Picture.Length > 0);
            var mm = length.What == "length" ? part.LengthMm : part.WidthMm;
            return reading.Low <= mm && mm <= reading.High;
        });
        // Issue 3 asks for at least 80 % of them; of twenty 90 % intervals sixteen or more hold in 96 of 100 dossiers (binomial).
        Assert.True(held >= 16, $"{held} of {clicked.Count}");
    }

    [Fact]
    public void Both_sides_of_its_main_board_lie_on_one_another()
    {
        var dossier = demo.Dossier;
        var board = Assert.Single(dossier.Model.Boards("A").Boards).Laid;
        Assert.Equal((6, 3), (board.Pictures.Count, board.Pictures.Count(picture => picture.Mirrored)));
        Assert.Empty(board.LeftOut);
        Assert.All(board.Pictures, picture => Assert.Empty(picture.Remarks.Concat(picture.Warnings.Select(warning => warning.Say))));
        string Sha(string name) => dossier.Model.Picture(name).Sha256;
        var squares = new List<double>();
        var landmarks = board.Landmarks.Select(landmark => landmark.Name).ToList();
        foreach (var via in Brindle.MainTop().Parts.Where(part => part.Shape == PartShape.Hole && !landmarks.Contains(part.Spot)).Select(part => part.Spot))
        {
            var (from, to) = (BrindleShots.Named("brindle-main-top.png"), BrindleShots.Named("brindle-main-bottom-tilted.png"));
            var carried = board.Carry(Sha(from.Name), from.Truth.Parts.Single(part => part.Part.Spot == via).Centre, 0.7, Sha(to.Name));
            var um = carried.At.DistanceTo(to.Truth.Parts.Single(part => part.Part.Spot == via).Centre) / to.Scene.PxPerMm * 1000;
            squares.Add(um * um);
        }

        // Issue 4's target of 50 µm, which is one pixel of these pictures of 960 × 720 px: as root mean square over vias that are no landmarks.
        Assert.Equal(10, squares.Count);
        Assert.InRange(Math.Sqrt(squares.Average()), 0, 50);
        // A landmark that a part covers cannot be pointed at.
        foreach (var part in Brindle.MainTop().Parts.Concat(Brindle.MainBottom().Parts.Select(part => part with { X = Brindle.MainTop().BoardWidthMm - part.X })).Where(part => part.Shape != PartShape.Hole))
        {
            foreach (var via in Brindle.MainTop().Parts.Where(hole => landmarks.Contains(hole.Spot)))
            {
                Assert.False(Math.Abs(via.X - part.X) < (part.LengthMm / 2) + part.LeadMm && Math.Abs(via.Y - part.Y) < (part.WidthMm / 2) + part.LeadMm && part.TurnDegrees == 0, $"{part.Spot} covers {via.Spot}");
            }
        }
    }

    // Reproducible from the journal on: same writer, same clock, same bytes. Pictures are rendered on all cores, in any order.
    [Fact]
    public void Laid_out_twice_it_is_the_same_to_the_byte()
    {
        using var again = demo.LayOut("again");
        var other = Desk.Dossier(demo.Seat, again, DemoDossier.Name).Value;
        // An entry's id is the hash of its stored bytes, which name the entries before it.
        Assert.Equal(demo.Dossier.Session.View.Entries.Select(entry => entry.Entry.Id), other.Session.View.Entries.Select(entry => entry.Entry.Id));
        var (one, two) = (Files(demo.Workspace), Files(again));
        Assert.Equal(BrindleShots.All.Count + 2, one.Count);
        Assert.Equal(one.Keys, two.Keys);
        Assert.All(one, file => Assert.Equal(File.ReadAllBytes(file.Value), File.ReadAllBytes(two[file.Key])));
    }

    [Fact]
    public void A_chip_is_noted_with_as_many_pins_as_it_is_drawn_with()
    {
        var drawn = Truth().Where(part => part.Shape == PartShape.Chip && part.Ways > 0).ToDictionary(part => part.Spot, part => part.Ways);
        var noted = demo.Dossier.Session.View.Live<PinsSighting>().Where(pins => drawn.ContainsKey(pins.Value.Spot)).ToDictionary(pins => pins.Value.Spot, pins => pins.Value.Count!.Value);
        Assert.Equal(14, noted["U7"]);
        Assert.Equal(noted, drawn.Where(part => noted.ContainsKey(part.Key)).ToDictionary(part => part.Key, part => part.Value));
        Assert.Equal(["Q1"], drawn.Keys.Except(noted.Keys));
    }

    // Issue 3: of each chip's mark, by itself, four fifths of the letters are read right at least once.
    [Fact]
    public void Each_chip_has_a_reading_with_four_fifths_of_its_mark_right()
    {
        var marks = Truth().Where(part => part.Marks.Count > 0).ToDictionary(part => ("A", part.Spot), part => string.Concat(part.Marks));
        marks[("B", "U7")] = string.Concat(BrindleShots.OtherAccelerometer);
        var readings = demo.Dossier.Session.View.Live<MarkSighting>().GroupBy(mark => (mark.Specimen, mark.Value.Spot)).ToList();
        Assert.Equal(9, readings.Count);
        foreach (var chip in readings)
        {
            var truth = marks[chip.Key];
            var right = chip.Max(mark => string.Concat(mark.Value.Lines.Select(line => line.Text)).Zip(truth).Count(pair => pair.First == pair.Second));
            Assert.True(right >= 0.8 * truth.Length, $"{chip.Key}: {right} of {truth.Length}");
        }
    }

    private static IEnumerable<ScenePart> Truth() => new[] { Brindle.MainTop(), Brindle.MainBottom(), Brindle.LampTop() }.SelectMany(board => board.Parts);

    private static SortedDictionary<string, string> Files(Workspace workspace)
    {
        var folder = Path.Combine(workspace.Folder, "files");
        return new(Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).ToDictionary(file => Path.GetRelativePath(folder, file)), StringComparer.Ordinal);
    }
}
