using Lidoff.Evidence.Grading;
using Lidoff.Weighing.Questions;
using Lidoff.Weighing.Tests.Modelling;

namespace Lidoff.Weighing.Tests.Questions;

public sealed class QuestionBoardTests : IDisposable
{
    private readonly Bench bench = new();

    public void Dispose() => bench.Dispose();

    private Evidence.Entries.ValueList<BoardQuestion> Board => QuestionBoard.Of(bench.View, bench.Model);

    [Fact]
    public void Questions_stand_in_their_order_and_dropped_ones_are_gone()
    {
        bench.Note(
            """{"kind":"question","question":"Q10","text":"a"}""",
            """{"kind":"question","question":"Q2","text":"b"}""",
            """{"kind":"question","question":"Q3","text":"c","order":5}""",
            """{"kind":"question","question":"Q4","text":"d","order":1}""",
            """{"kind":"question","question":"Q5","text":"e"}""",
            """{"kind":"question","question":"Q5","dropped":true}""",
            """{"kind":"question","question":"Q4","text":"d, put better","order":1}""");
        Assert.Equal(["d, put better", "c", "b", "a"], Board.Select(question => question.Asked.Text));
    }

    [Fact]
    public void A_question_without_ties_is_open_and_asks_for_one()
    {
        bench.Note("""{"kind":"question","question":"Q1","text":"Who made it?"}""");
        var question = Assert.Single(Board);
        Assert.Equal((QuestionState.Open, "open", Grade.E0), (question.State, question.Answer, question.Grade));
        Assert.Equal("tie Q1 to what would answer it: a number, a part, a claim", question.Next!.Move);
        bench.Note("""{"kind":"question","question":"Q1","text":"Who made it?","answer":"the Ottermill Works, says the box"}""");
        Assert.Equal((QuestionState.Answered, "the Ottermill Works, says the box", Grade.E1, null), (Board[0].State, Board[0].Answer, Board[0].Grade, Board[0].Next));
    }

    [Fact]
    public void Several_numbers_say_what_they_are_and_one_that_is_there_alone_does_not()
    {
        bench.Note(
            """{"kind":"reckon","reckoning":"R1","calculation":"divider_voltage","inputs":{"voltage":"3.3","upper":"10 kΩ","lower":"10 kΩ"},"says":"What is the tap at?"}""",
            """{"kind":"question","question":"Q1","text":"What is the tap at?","ties":["reckoning:R1","length:U9:width"]}""");
        // 3.3 V over two equal resistors is 1.65 V (Ohm's law).
        Assert.StartsWith("1.65", Board[0].Answer, StringComparison.Ordinal);
        bench.Note("""{"kind":"length","spot":"U9","what":"width","mm":7.0,"u_mm":0.05}""");
        Assert.StartsWith("reckoning:R1: 1.65", Board[0].Answer, StringComparison.Ordinal);
        Assert.Contains("width of U9: 7.000 ± 0.050 mm", Board[0].Answer, StringComparison.Ordinal);
    }

    [Fact]
    public void A_number_is_answered_with_its_interval_and_the_grade_of_what_it_rests_on()
    {
        bench.Note("""{"kind":"length","spot":"U1","what":"long side","mm":7.0,"u_mm":0.05}""", """{"kind":"question","question":"Q1","text":"How long?","ties":["length:U1:long side"]}""");
        var question = Assert.Single(Board);
        // ± 1.645 u is the normal's middle 90 % (tables of the standard normal distribution).
        Assert.Equal((QuestionState.Answered, "7.000 ± 0.050 mm", "6.92 to 7.08 mm", Grade.E2), (question.State, question.Answer, question.Spread, question.Grade));
        Assert.Null(question.Next);
    }

    [Fact]
    public void Two_ties_each_say_what_they_are_and_the_worst_grade_counts()
    {
        bench.Note(
            """{"kind":"body","spot":"U1","mm":[6.0,6.0],"u_mm":0.02}""",
            """{"kind":"pins","spot":"U1","count":48}""",
            """{"kind":"mark","spot":"U1","lines":["ZX52832"]}""",
            """{"kind":"question","question":"Q1","text":"What drives it, and how large?","ties":["part:U1","body:U1:length"]}""");
        var question = Assert.Single(Board);
        Assert.StartsWith("part at U1: ZX52832 (over 99 %); body length of U1: 6.000 ± 0.020 mm", question.Answer, StringComparison.Ordinal);
        // One measured body is one line of evidence, E2; mark, body and pins under the part are more (docs/design.md, 5).
        Assert.Equal([Grade.E3, Grade.E2], question.Ties.Select(tie => tie.Grade));
        Assert.Equal(Grade.E2, question.Grade);
        Assert.Equal(QuestionState.Answered, question.State);
    }

    // Two parts that a mark leaves open, neither in front: each about a half. The family they share is an answer (docs/design.md, 1).
    [Fact]
    public void Rivals_that_stay_possible_are_named_with_their_odds()
    {
        bench.Note("""{"kind":"mark","spot":"U1","lines":["ZX528??"]}""", """{"kind":"question","question":"Q1","text":"?","ties":["part:U1"]}""");
        var question = Assert.Single(Board);
        Assert.Equal(QuestionState.Answered, question.State);
        Assert.Equal("family ZX52 (99 %)", question.Answer);
        Assert.Matches("^or ZX528(32 (4[5-9]|50) %, ZX52810|10 (4[5-9]|50) %, ZX52832) (4[5-9]|50) %$", question.Spread);
    }

    // A mark that no part of the list can carry: that it is in no list is so far a guess, and a guess does not answer (design §5, E0).
    [Fact]
    public void A_guess_at_a_name_leaves_the_question_open()
    {
        bench.Note("""{"kind":"mark","spot":"U4","lines":["K7"]}""", """{"kind":"question","question":"Q1","text":"Who makes it?","ties":["part:U4"]}""");
        var question = Assert.Single(Board);
        Assert.Equal((QuestionState.Open, Grade.E0), (question.State, question.Grade));
        Assert.NotNull(question.Next);
    }

    [Fact]
    public void What_is_missing_is_said_beside_what_is_there()
    {
        bench.Note("""{"kind":"length","spot":"U1","what":"width","mm":7.0,"u_mm":0.05}""", """{"kind":"question","question":"Q1","text":"?","ties":["length:U1:width","mass:BT1","claim:C9"]}""");
        var question = Assert.Single(Board);
        Assert.Equal(QuestionState.Missing, question.State);
        Assert.Equal("width of U1: 7.000 ± 0.050 mm", question.Answer);
        Assert.Equal(["There is no mass of BT1 yet.", "There is no claim called 'C9' in this dossier."], question.Missing);
        Assert.Equal("weigh BT1", question.Next!.Move);
    }

    [Fact]
    public void A_quarrel_under_a_question_is_its_state_and_its_next_move()
    {
        bench.Note(
            """{"kind":"length","spot":"S1","what":"width","mm":3.02,"u_mm":0.02}""",
            """{"kind":"length","spot":"S1","what":"width","mm":3.20,"u_mm":0.01}""",
            """{"kind":"question","question":"Q1","text":"?","ties":["length:S1:width"]}""");
        var question = Assert.Single(Board);
        Assert.Equal(QuestionState.Quarrel, question.State);
        Assert.Equal("width of S1 cannot be 3.020 ± 0.020 mm and 3.200 ± 0.010 mm.", Assert.Single(question.Quarrels));
        Assert.Equal("measure width of S1 once more with a calliper", question.Next!.Move);
    }

    // Readers were told nothing yet: what is missing is a measurement, and nothing moved.
    [Fact]
    public void A_claim_that_waits_for_its_support_leaves_its_question_open_for_that()
    {
        var entry = bench.Note("""{"kind":"question","question":"Q1","text":"?","ties":["claim:C1"]}""")[0];
        TiedClaim claim = new("C1", "It weighs unknown.", Grade.E0, false, true, [], [entry.Id]);
        var question = Assert.Single(QuestionBoard.Of(bench.View, bench.Model, [claim]));
        Assert.Equal((QuestionState.Missing, "open"), (question.State, question.Answer));
        Assert.Equal(["C1 leans on something that has not been measured yet"], question.Missing);
    }

    [Fact]
    public void A_claim_answers_as_a_sentence_and_says_when_it_is_stale()
    {
        var entry = bench.Note("""{"kind":"question","question":"Q1","text":"?","ties":["claim:C1"]}""")[0];
        TiedClaim claim = new("C1", "The cell holds 180 mAh.", Grade.E3, true, false, [], [entry.Id]);
        var question = Assert.Single(QuestionBoard.Of(bench.View, bench.Model, [claim]));
        Assert.Equal((QuestionState.Answered, "The cell holds 180 mAh.", "C1 does not say any more what was published", Grade.E3), (question.State, question.Answer, question.Spread, question.Grade));
    }

    [Fact]
    public void The_board_is_the_same_when_nothing_changed()
    {
        bench.Note("""{"kind":"mark","spot":"U1","lines":["ZX52???"]}""", """{"kind":"question","question":"Q1","text":"?","ties":["part:U1"]}""");
        Assert.Equal(Board, Board);
        Assert.Equal(Board, QuestionBoard.Of(bench.View, bench.Rebuilt()));
    }
}
