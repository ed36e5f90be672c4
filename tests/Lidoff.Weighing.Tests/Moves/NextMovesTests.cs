using Lidoff.Weighing.Moves;
using Lidoff.Weighing.Tests.Modelling;

namespace Lidoff.Weighing.Tests.Moves;

public sealed class NextMovesTests : IDisposable
{
    private readonly Bench bench = new();

    public void Dispose() => bench.Dispose();

    private List<NextMove> All => [.. NextMoves.Of(bench.View, bench.Model)];

    private List<NextMove> For(string question) => [.. NextMoves.For(bench.View, bench.Model, question).Value];

    [Fact]
    public void An_empty_dossier_has_nothing_to_do() => Assert.Empty(All);

    // Two made-up parts differ in body, pitch and pins; ZX52832 and ZX52810 are equally likely, so what splits them surely tells one bit (C. E.
    // Shannon, A Mathematical Theory of Communication, 1948: log2 of two equal chances), less what no list and blunders take away.
    [Fact]
    public void An_undecided_spot_gets_what_the_naming_engine_proposes()
    {
        bench.Note("""{"kind":"mark","spot":"U1","lines":["ZX528??"]}""");
        var moves = For("What is U1?");
        Assert.Contains(moves, move => move.Move == "U1: count the pins");
        Assert.All(moves, move =>
        {
            Assert.InRange(move.Bits!.Value, 0.05, 1.0);
            Assert.Equal("spot:U1", move.About);
        });
        Assert.InRange(moves.Single(move => move.Move == "U1: count the pins").Bits!.Value, 0.8, 1.0);
        Assert.All(moves.Zip(moves.Skip(1)), pair => Assert.True(pair.First.Bits / pair.First.Minutes >= (pair.Second.Bits / pair.Second.Minutes) - 0.001));
        bench.Note("""{"kind":"pins","spot":"U1","count":48}""", """{"kind":"body","spot":"U1","mm":[6,6]}""", """{"kind":"decide","spot":"U1","accept":"ZX52832","why":"read under raking light"}""");
        Assert.Empty(All);
    }

    [Fact]
    public void A_chip_nobody_looked_at_is_looked_at_and_a_glue_bead_is_not_named()
    {
        bench.Note("""{"kind":"spot","spot":"U1","class":"chip"}""", """{"kind":"spot","spot":"H1","class":"glue"}""");
        var move = Assert.Single(All);
        Assert.Equal(("What is U1?", "look at U1: read its mark, measure its body, count its pins", null, MoveRisk.None), (move.Question, move.Move, move.Bits, move.Risk));
        Assert.EndsWith("How much it would tell is not reckoned yet.", move.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_spot_that_is_only_spoken_of_is_pointed_at()
    {
        bench.Note("""{"kind":"touch","a":"U7.1","b":"GND","beep":true}""", """{"kind":"rail","rail":"VSYS","from":"U8"}""");
        Assert.Equal(["point at U7 in a picture", "point at U8 in a picture"], All.Select(move => move.Move));
    }

    [Fact]
    public void A_reckoning_without_its_measurement_asks_for_that_measurement()
    {
        bench.Note(
            """{"kind":"reckon","reckoning":"R1","calculation":"pitch_from_cable","inputs":{"width":{"from":"length:J1:length"},"ways":"14"}}""",
            """{"kind":"question","question":"Q1","text":"How far apart are the ways?","ties":["R1"]}""");
        Assert.Equal("measure length of J1 with a calliper", Assert.Single(For("Q1")).Move);
        bench.Note("""{"kind":"length","spot":"J1","what":"length","mm":18.75,"u_mm":0.02}""");
        Assert.Empty(For("Q1"));
    }

    [Fact]
    public void A_reckoning_without_a_typed_input_says_which()
    {
        bench.Note(
            """{"kind":"reckon","reckoning":"R1","calculation":"capacity_from_energy","inputs":{"energy":"0.67 Wh ± 0.02"}}""",
            """{"kind":"question","question":"Q1","text":"?","ties":["reckoning:R1"]}""");
        var move = Assert.Single(For("Q1"));
        Assert.StartsWith("R1: find voltage (", move.Move, StringComparison.Ordinal);
        Assert.StartsWith("\"voltage\" is missing", move.Why, StringComparison.Ordinal);
    }

    // Runtime = capacity / mean current. By hand, relative variances: capacity (4/180)² = 0.0005, current (40/100)² = 0.16, so the current makes
    // 0.16 / 0.1605 = 99.7 % of the doubt; the events, 1 µC an hour, are 0.3 nA.
    [Fact]
    public void A_wide_number_asks_for_the_input_that_makes_most_of_its_doubt()
    {
        bench.Note(
            """{"kind":"reckon","reckoning":"R2","calculation":"runtime","inputs":{"capacity":"180 mAh ± 4","sleep_current":"100 µA ± 40","event_charge":"1 µC ± 0.1","event_rate":"1","reserve":"0"}}""",
            """{"kind":"question","question":"Q1","text":"How long does it run?","ties":["reckoning:R2"]}""");
        var move = For("Q1")[0];
        Assert.StartsWith("R2: measure sleep current (", move.Move, StringComparison.Ordinal);
        Assert.StartsWith("It makes 100 % of the doubt of R2, which lies in ", move.Why, StringComparison.Ordinal);
    }

    // By hand: of 100 g a tenth to either side is 10 g; the normal's middle 90 % is ± 1.645 u (tables of the standard normal distribution), so
    // the line lies at u = 6.08 g. That a tenth is the line is ours.
    [Theory]
    [InlineData(6.05, false)]
    [InlineData(6.11, true)]
    public void A_number_is_wide_from_a_tenth_to_either_side(double u, bool wide)
    {
        bench.Note(
            string.Create(System.Globalization.CultureInfo.InvariantCulture, $$"""{"kind":"mass","spot":"A","g":100,"u_g":{{u}}}"""),
            """{"kind":"question","question":"Q1","text":"?","ties":["mass:A"]}""");
        Assert.Equal(wide ? ["weigh A once more, on a finer scale"] : [], For("Q1").Select(move => move.Move));
    }

    [Fact]
    public void The_share_is_followed_to_its_sighting()
    {
        bench.Note(
            """{"kind":"length","spot":"J1","what":"length","mm":18.75,"u_mm":3}""",
            """{"kind":"reckon","reckoning":"R1","calculation":"pitch_from_cable","inputs":{"width":{"from":"length:J1:length"},"ways":"14"}}""",
            """{"kind":"question","question":"Q1","text":"?","ties":["R1"]}""");
        Assert.Equal("measure length of J1 once more with a calliper", Assert.Single(For("Q1")).Move);
    }

    [Fact]
    public void A_picture_without_scale_on_which_spots_lie_gets_one()
    {
        bench.Picture("top.png");
        bench.Note("""{"kind":"spot","spot":"H1","class":"glue","picture":"top.png","point":[10,10]}""");
        var move = Assert.Single(All);
        Assert.Equal("set the scale of top.png: two clicks and a known length", move.Move);
        Assert.StartsWith("One spot lies in top.png", move.Why, StringComparison.Ordinal);
        bench.Note("""{"kind":"scale","picture":"top.png","from":[0,0],"to":[1000,0],"length_mm":20}""");
        Assert.Empty(All);
    }

    [Fact]
    public void A_length_clicked_in_a_picture_without_scale_asks_for_the_scale()
    {
        bench.Picture("top.png");
        bench.Note("""{"kind":"length","spot":"U1","what":"width","picture":"top.png","from":[0,0],"to":[100,0]}""", """{"kind":"question","question":"Q1","text":"?","ties":["length:U1:width"]}""");
        Assert.Equal("set the scale of top.png: two clicks and a known length", Assert.Single(For("Q1")).Move);
    }

    // A mass without a spot is the whole specimen's, and so is the one noted with the specimen: either counts as the weighing a plan asked for.
    [Theory]
    [InlineData("""{"kind":"mass","g":21.4}""")]
    [InlineData("""{"kind":"specimen","specimen":"A","mass_g":21.4}""")]
    public void The_whole_is_weighed_wherever_its_mass_was_noted(string weighed)
    {
        bench.Note("""{"kind":"plan","plan":"P1","does":"cut the seam","act":"cut","destroys":"the seal","record_first":["mass:whole"]}""");
        Assert.Equal(["record first: mass:whole"], All.Select(move => move.Move));
        bench.Note(weighed);
        Assert.Empty(All);
        Assert.Equal(0.0214, bench.Model.Value("mass:whole").Number!.Value, 12);
    }

    [Fact]
    public void Before_a_step_that_destroys_comes_what_must_be_recorded()
    {
        bench.Note("""{"kind":"plan","plan":"P1","does":"cut the seam","act":"cut","destroys":"the seal","record_first":["mass:CASE","leak test"]}""");
        Assert.Equal(["record first: mass:CASE", "record first: leak test"], All.Select(move => move.Move));
        Assert.All(All, move => Assert.Equal("What must be recorded before P1, cut the seam?", move.Question));
        bench.Note("""{"kind":"mass","spot":"CASE","g":3}""");
        Assert.Equal("record first: leak test", Assert.Single(All).Move);
        bench.Note("""{"kind":"step","does":"cut","plan":"P1"}""");
        Assert.Empty(All);
    }

    [Fact]
    public void One_move_stands_once_and_for_the_question_that_comes_first()
    {
        bench.Note(
            """{"kind":"question","question":"Q1","text":"first","ties":["mass:A"]}""",
            """{"kind":"question","question":"Q2","text":"second","ties":["mass:A"]}""");
        Assert.Equal("first", Assert.Single(All).Question);
    }

    [Fact]
    public void Touches_that_cannot_go_together_are_a_quarrel_with_its_move()
    {
        bench.Note("""{"kind":"touch","a":"TP1","b":"TP2","beep":true,"threshold_ohm":40}""", """{"kind":"touch","a":"TP1","b":"TP2","open":true}""");
        var move = Assert.Single(All);
        Assert.Equal(("Which of them is true (one net and apart)?", "touch those points once more, with the cell out and the capacitors discharged"), (move.Question, move.Move));
    }
}
