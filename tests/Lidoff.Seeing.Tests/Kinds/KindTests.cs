using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Kinds;

namespace Lidoff.Seeing.Tests.Kinds;

public sealed class KindTests
{
    [Fact]
    public void The_contracts_mark_line_reads()
    {
        var mark = Read(new MarkKind(), """{"kind":"mark","spot":"U3","specimen":"A","lines":["N52832","QFAA?0"],"instrument":"eye"}""");
        Assert.Equal("U3", mark.Spot);
        Assert.Equal("N52832/QFAA?0", mark.Text);
        Assert.False(mark.Lines[0].IsLattice);
    }

    [Fact]
    public void A_lattice_keeps_its_alternatives_and_never_dresses_up_a_guess()
    {
        var mark = Read(new MarkKind(), """{"spot":"U3","lines":[[[["N",0.98],["H",0.01]],[["5",0.4],["S",0.35]]],"QFAA"]}""");
        Assert.Equal("N?/QFAA", mark.Text);
        Assert.Equal([new MarkGlyph("5", 0.4), new MarkGlyph("S", 0.35)], mark.Lines[0].Places[1].Top);
        Assert.Equal(mark, Read(new MarkKind(), """{"spot":"U3","lines":[[[["N",0.98],["H",0.01]],[["5",0.4],["S",0.35]]],"QFAA"]}"""));
    }

    [Fact]
    public void Maybe_nothing_is_an_answer_for_a_place_and_likely_nothing_is_left_out_of_the_text()
    {
        var mark = Read(new MarkKind(), """{"spot":"U3","lines":[[[["N",1]],[["8",0.4],["",0.4]],[["",0.9]],[["2",1]]]]}""");
        Assert.Equal([new MarkGlyph("8", 0.4), new MarkGlyph("", 0.4)], mark.Lines[0].Places[1].Top);
        Assert.Equal("N?2", mark.Text);
    }

    [Theory]
    [InlineData("""{"spot":"U3"}""", "\"lines\" should be a list of 1 to 20 lines.")]
    [InlineData("""{"spot":"U3","lines":[]}""", "\"lines\" should be a list of 1 to 20 lines.")]
    [InlineData("""{"spot":"U3","lines":[7]}""", "\"lines[0]\" should be a text or a list of places.")]
    [InlineData("""{"spot":"U3","lines":["A",[[["N",0.9],["M",0.2]]]]}""", "\"lines[1][0]\" should be a list of [character, probability] with probabilities from 0 to 1 that do not exceed 1 together.")]
    [InlineData("""{"spot":"U3","lines":[[[["NN",0.9]]]]}""", "\"lines[0][0]\" should be a list of [character, probability] with probabilities from 0 to 1 that do not exceed 1 together.")]
    [InlineData("""{"spot":"U3","lines":[[[["\ud800",0.9]]]]}""", "\"lines[0][0]\" should be a list of [character, probability] with probabilities from 0 to 1 that do not exceed 1 together.")]
    public void A_bad_mark_gives_its_sentence(string line, string say) => Assert.Equal(say, Assert.Single(Refused(new MarkKind(), line)));

    [Theory]
    [InlineData("""{"picture":"a","from":[0,0],"to":[9,0],"length_mm":4,"middle":[5,0]}""", "\"middle_mm\" is missing; it should be a number above 0.")]
    [InlineData("""{"picture":"a","from":[0,0],"to":[9,0],"length_mm":4,"middle":[9,0],"middle_mm":2}""", "\"middle\" should be another place than both ends.")]
    [InlineData("""{"picture":"a","from":[0,0],"to":[9,0],"length_mm":4,"middle":[5,0],"middle_mm":4}""", "\"middle_mm\" should be less than length_mm, of which it is a part.")]
    public void A_middle_lies_between_both_ends(string line, string say) => Assert.Equal(say, Assert.Single(Refused(new ScaleKind(), line)));

    // The sorts of spots that the workbench promises to point at.
    [Theory]
    [InlineData("chip")]
    [InlineData("passive")]
    [InlineData("stiffener")]
    [InlineData("glue")]
    [InlineData("overmould")]
    [InlineData("antenna")]
    [InlineData("seam")]
    [InlineData("connector")]
    [InlineData("cell")]
    [InlineData("electrode")]
    [InlineData("crystal")]
    [InlineData("strain relief")]
    public void A_spot_can_be_of_every_sort_offered(string word)
    {
        Assert.Contains(word, SpotClasses.Words);
        Assert.Equal(word, Read(new SpotKind(), $$"""{"spot":"{{SpotClasses.Find(word)!.Letters}}1","class":"{{word}}"}""").Class);
    }

    // Class letters of IEEE 315 (from memory): where people agree with it. A switch is S there and SW on most boards, an antenna E and AE, a
    // motor B and M; common practice was taken, no source.
    [Theory]
    [InlineData("chip", "U")]
    [InlineData("resistor", "R")]
    [InlineData("capacitor", "C")]
    [InlineData("inductor", "L")]
    [InlineData("diode", "D")]
    [InlineData("transistor", "Q")]
    [InlineData("crystal", "Y")]
    [InlineData("fuse", "F")]
    [InlineData("connector", "J")]
    [InlineData("test pad", "TP")]
    [InlineData("cell", "BT")]
    [InlineData("microphone", "MK")]
    [InlineData("speaker", "LS")]
    [InlineData("display", "DS")]
    [InlineData("board", "A")]
    [InlineData("cable", "W")]
    [InlineData("electrode", "E")]
    [InlineData("screw", "H")]
    [InlineData("button", "SW")]
    [InlineData("antenna", "AE")]
    [InlineData("motor", "M")]
    public void Electrical_parts_have_the_letters_that_drawings_give_them(string word, string letters) => Assert.Equal(letters, SpotClasses.Find(word)!.Letters);

    [Fact]
    public void Sorts_of_spots_are_told_apart_and_their_letters_make_designators()
    {
        Assert.Equal(SpotClasses.Words.Distinct(), SpotClasses.Words);
        Assert.All(SpotClasses.All, each => Assert.Matches("^[A-Z]{1,3}$", each.Letters));
    }

    [Fact]
    public void The_contracts_body_line_reads()
    {
        var body = Read(new BodyKind(), """{"kind":"body","spot":"U3","mm":[6.00,6.01],"u_mm":0.02}""");
        Assert.Equal(new BodySighting("U3", 6.00, 6.01, 0.02, null), body);
        Assert.Equal((6.01, 6.00), (body.LengthMm, body.WidthMm));
    }

    [Fact]
    public void A_body_without_doubt_is_a_callipers()
    {
        // Common practice after DIN 862: ±0.02 mm outside as a rectangle (checkbook divisor 1/sqrt3: 0.01155), 0.01 repeatability.
        var u = Read(new BodyKind(), """{"spot":"U3","mm":[2,2]}""").UMm;
        Assert.Equal(Math.Sqrt((0.01155 * 0.01155) + (0.01 * 0.01)), u, 3);
    }

    // The same calliper for one length; over the gaps of a row its 0.0153 mm are shared, and two thirds of it stand for a usual one (common
    // practice, no source).
    [Fact]
    public void Lengths_and_pitches_without_doubt_have_a_callipers_too()
    {
        Assert.Equal(0.0153, Read(new LengthKind(), """{"spot":"U3","what":"width","mm":6.01}""").ByInstrument!.UMm, 0.0005);
        Assert.Equal(0.01, Read(new PitchKind(), """{"spot":"J1","mm":1.25,"leads":14}""").UMm);
    }

    [Fact]
    public void All_faults_of_a_line_come_at_once()
    {
        Assert.Equal(
            [
                "\"spot\" is missing; it should be a text of 1 to 40 characters.",
                "\"mm\" should be two numbers [a, b], each a number above 0, but here it is [0,-1].",
                "\"u_mm\" should be a number of 0 or more, but here it is \"0,02\".",
            ],
            Refused(new BodyKind(), """{"mm":[0,-1],"u_mm":"0,02"}"""));
    }

    [Fact]
    public void A_scale_reads_and_two_equal_ends_are_refused()
    {
        var scale = Read(new ScaleKind(), """{"picture":"tag.jpg","from":[1500,311],"to":[1500,3112],"length_mm":26,"u_mm":0.05}""");
        Assert.Equal(2801, scale.Reference.From.DistanceTo(scale.Reference.To));
        Assert.Equal(
            ["\"to\" should be another place than \"from\": between equal places there is no length."],
            Refused(new ScaleKind(), """{"picture":"tag.jpg","from":[1,2],"to":[1,2],"length_mm":26}"""));
    }

    [Fact]
    public void A_spot_is_pointed_at_with_a_place_or_a_box_in_a_picture()
    {
        Assert.Equal(new(10, 20), Read(new SpotKind(), """{"spot":"U3","picture":"p.jpg","point":[10,20],"role":"radio","why":"crystal beside it","class":"chip"}""").At);
        Assert.Equal(4, Read(new SpotKind(), """{"spot":"U3","picture":"p.jpg","box":[1,2,3,4]}""").Box!.Value.Height);
        Assert.Null(Read(new SpotKind(), """{"spot":"GLUE1","role":"holds the cell"}""").At);
        Assert.Equal(
            ["\"box\" should be x, y, width and height with width and height above zero.", "\"picture\" should be the picture in which the spot was pointed at."],
            Refused(new SpotKind(), """{"spot":"U3","box":[1,2,0,4]}"""));
    }

    [Fact]
    public void Ends_moved_onto_edges_say_so_with_their_doubts_and_where_they_were_clicked()
    {
        var length = Read(new LengthKind(), """{"spot":"U1","what":"width","picture":"p.png","from":[10.2,5],"to":[29.7,5],"ends_u_px":[0.3,0.4],"ends_by":"edges 1","clicked":[[11,5],[29,5]]}""");
        Assert.Equal(((0.3, 0.4), "edges 1"), (length.InPicture!.EndsUPx!.Value, length.InPicture.EndsBy));
        Assert.Equal([new(11, 5), new(29, 5)], length.InPicture.Clicked);
        Assert.Equal(Math.Sqrt(0.125), length.InPicture.EachPx, 9);
        Assert.Equal(1, Read(new LengthKind(), """{"spot":"U1","what":"width","picture":"p.png","from":[10.2,5],"to":[29.7,5]}""").InPicture!.EachPx);
        Assert.Equal(
            [
                "\"ends_u_px\" should be two numbers, one for each end.",
                "\"clicked\" should be given together with ends_by: where a person clicked, and what moved the ends from there.",
            ],
            Refused(new LengthKind(), """{"spot":"U1","what":"width","picture":"p.png","from":[10.2,5],"to":[29.7,5],"ends_u_px":[0.3],"clicked":[[11,5],[29,5]]}"""));
    }

    [Fact]
    public void A_length_comes_from_a_picture_or_an_instrument_never_both()
    {
        Assert.Equal(1.0, Read(new LengthKind(), """{"spot":"U3","what":"width","picture":"p.jpg","from":[1,2],"to":[3,4]}""").InPicture!.ClickPx);
        Assert.Equal(new(6.01, 0.02, "calliper"), Read(new LengthKind(), """{"spot":"U3","what":"width","mm":6.01,"u_mm":0.02,"instrument":"calliper"}""").ByInstrument);
        Assert.Equal(
            ["\"mm\" should be left out when a picture with from and to is given: a length has one origin."],
            Refused(new LengthKind(), """{"spot":"U3","what":"width","mm":6.01,"picture":"p.jpg","from":[1,2],"to":[3,4]}"""));
    }

    [Fact]
    public void A_picture_names_its_file_and_side()
    {
        var picture = Read(new PictureKind(), """{"file":"tag.jpg","side":"bottom","zoom":"2x","light":"ring"}""");
        Assert.Equal((PictureSide.Bottom, "2x", ""), (picture.Side, picture.Zoom, picture.Camera));
        Assert.Equal(["\"side\" should be one of top, bottom, edge, other, but here it is \"front\"."], Refused(new PictureKind(), """{"file":"tag.jpg","side":"front"}"""));
    }

    [Fact]
    public void A_pitch_says_over_how_many_leads()
    {
        Assert.Equal(new PitchSighting("J1", 1.25, 0.004, 14), Read(new PitchKind(), """{"spot":"J1","mm":1.25,"u_mm":0.004,"leads":14}"""));
        Assert.Equal(["\"leads\" should be a whole number from 2 to 10000, but here it is 1."], Refused(new PitchKind(), """{"spot":"J1","mm":1.25,"leads":1}"""));
    }

    [Fact]
    public void A_landmark_is_seen_in_a_picture_or_known_by_its_place_or_both()
    {
        Assert.Equal(new LandmarkSighting("H1", "top.png", new(120.5, 80), 1.5, null, null, 0.03), Read(new LandmarkKind(), """{"landmark":"H1","picture":"top.png","point":[120.5,80]}"""));
        Assert.Equal(new LandmarkSighting("H1", "", null, 1.5, 2.5, 2, 0.05), Read(new LandmarkKind(), """{"landmark":"H1","mm":[2.5,2],"u_mm":0.05}"""));
        Assert.Equal(new LandmarkSighting("H1", "top.png", new(1, 2), 0.7, 0, 0, 0.03), Read(new LandmarkKind(), """{"landmark":"H1","picture":"top.png","point":[1,2],"u_px":0.7,"mm":[0,0]}"""));
        Assert.Equal(["\"point\" should be a picture with a point, or a place in mm."], Refused(new LandmarkKind(), """{"landmark":"H1"}"""));
        Assert.Equal(["\"picture\" is missing; it should be a text of 1 to 255 characters."], Refused(new LandmarkKind(), """{"landmark":"H1","point":[1,2]}"""));
    }

    private static T Read<T>(EvidenceKind<T> kind, string line)
        where T : class
    {
        using var document = JsonDocument.Parse(line);
        var outcome = kind.Read(document.RootElement, kind.Version);
        Assert.True(outcome.Ok, outcome.Ok ? "" : outcome.Faults[0].Say);
        return outcome.Value;
    }

    private static string[] Refused<T>(EvidenceKind<T> kind, string line)
        where T : class
    {
        using var document = JsonDocument.Parse(line);
        return [.. kind.Read(document.RootElement, kind.Version).Faults.Select(fault => fault.Say)];
    }
}
