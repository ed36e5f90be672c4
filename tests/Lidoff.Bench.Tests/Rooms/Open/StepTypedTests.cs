using Lidoff.Bench.Rooms.Open.Typed;
using Lidoff.Opening.Cautioning;

namespace Lidoff.Bench.Tests.Rooms.Open;

/// <summary>The grammar is ours; what it must make of each line is said in its hint.</summary>
public sealed class StepTypedTests
{
    [Fact]
    public void Every_part_has_its_sign()
    {
        var step = StepTyped.Read("cut the seam #cut @ceramic blade ~low speed !seal, and the print on it &seam.jpg 4min B1=3.61g").Value;
        Assert.Equal("cut the seam", step.Does);
        Assert.Equal(StepAct.Cut, step.Act);
        Assert.Equal("ceramic blade", step.Tool);
        Assert.Equal("low speed", step.Setting);
        Assert.Equal("seal, and the print on it", step.Destroys);
        Assert.Equal("seam.jpg", step.Picture);
        Assert.Equal(4, step.Minutes);
        Assert.Equal(new MassTyped("B1", 3.61, null, 0.01), Assert.Single(step.Masses));
    }

    [Theory]
    [InlineData("unplug it C1=1.30g ± 0.02 4min", 0.02)]
    [InlineData("unplug it C1=1.30 g ±0.02 4min", 0.02)]
    [InlineData("unplug it 4min C1=1.30 +- 0.02 g", 0.02)]
    [InlineData("unplug it C1=1.30 g 4min", null)]
    public void The_doubt_of_a_mass_goes_with_the_mass_and_not_into_the_words(string typed, double? doubt)
    {
        var step = StepTyped.Read(typed).Value;
        Assert.Equal("unplug it", step.Does);
        Assert.Equal(4, step.Minutes);
        Assert.Equal(new MassTyped("C1", 1.3, doubt, doubt is null ? 0.01 : 0), Assert.Single(step.Masses));
    }

    [Theory]
    [InlineData("lift the lid 2 h", "lift the lid", 120.0)]
    [InlineData("lift the lid for 12 min", "lift the lid", 12.0)]
    [InlineData("lift the lid 1,5min", "lift the lid", 1.5)]
    [InlineData("warm it ~60 °C, 30 min", "warm it", null)]
    [InlineData("lift the lid ~110C for 5 min", "lift the lid", null)]
    [InlineData("take the coil off #solder @iron ~300C 4min", "take the coil off", 4.0)]
    [InlineData("lift the lid @fingers, 1 min, B1=3.0 g", "lift the lid", 1.0)]
    [InlineData("lift the lid ~cold !two latches, 4 min, B1=0.42g", "lift the lid", 4.0)]
    [InlineData("4min lift the lid", "lift the lid", 4.0)]
    [InlineData("undo 4 screws", "undo 4 screws", null)]
    public void A_time_is_taken_out_of_the_words_but_not_out_of_a_setting(string typed, string does, double? minutes)
    {
        var step = StepTyped.Read(typed).Value;
        Assert.Equal(does, step.Does);
        Assert.Equal(minutes, step.Minutes);
        Assert.DoesNotContain(new[] { step.Tool, step.Setting, step.Destroys }, part => part.EndsWith(','));
    }

    [Theory]
    [InlineData("cut the seam -4min", "-4min")]
    [InlineData("cut the seam \u22122 h", "\u22122 h")]
    public void A_time_below_zero_is_said_and_not_taken_for_a_word(string line, string time)
    {
        // A step cannot take less than no time: common practice, no source.
        Assert.Equal($"\"{time}\" is a time below zero; type how long it took, such as 4min.", Assert.Single(StepTyped.Read(line).Faults).Say);
    }

    [Theory]
    [InlineData("cut the seam", StepAct.Cut)]
    [InlineData("Solder two wires", StepAct.Solder)]
    [InlineData("lift the lid", StepAct.Other)]
    [InlineData("cut a label #look", StepAct.Look)]
    [InlineData("cut the seam #", StepAct.Cut)]
    [InlineData("open it #XRAY", StepAct.XRay)]
    [InlineData("", StepAct.Other)]
    public void The_act_is_known_while_it_is_typed(string typed, StepAct act) => Assert.Equal(act, StepTyped.ActIn(typed));

    [Theory]
    [InlineData("take out screw ##2", "take out screw #2")]
    [InlineData("pry & lift", "pry & lift")]
    [InlineData("careful! it springs", "careful! it springs")]
    public void Signs_that_mean_nothing_stay_words(string typed, string does) => Assert.Equal(does, StepTyped.Read(typed).Value.Does);

    [Fact]
    public void A_plan_may_come_after_others_and_a_step_that_was_done_may_not()
    {
        var plan = StepTyped.ReadPlan("cut the seam #cut ^P1 ^P2 !seal", ["P1", "P2"]).Value;
        Assert.Equal(("cut the seam", "seal"), (plan.Does, plan.Destroys));
        Assert.Equal(["P1", "P2"], plan.After);
        Assert.Equal("There is no plan P9 to come first; there is P1.", Assert.Single(StepTyped.ReadPlan("cut the seam ^P9", ["P1"]).Faults).Say);
        Assert.Equal("There is no plan P9 to come first; nothing is planned yet.", Assert.Single(StepTyped.ReadPlan("cut the seam ^P9", []).Faults).Say);
        Assert.StartsWith("^P1 belongs to a plan;", Assert.Single(StepTyped.ReadDone("cut the seam ^P1").Faults).Say, StringComparison.Ordinal);
        Assert.Equal("press ^ and hold", StepTyped.ReadDone("press ^^ and hold").Value.Does);
    }

    [Fact]
    public void All_faults_come_at_once()
    {
        var faults = StepTyped.Read("#saw 1,500min 3min").Faults.Select(fault => fault.Say).ToList();
        Assert.Equal(3, faults.Count);
        Assert.StartsWith("There is no act \"saw\"; the acts are buy, look, xray, cut, pry", faults[0], StringComparison.Ordinal);
        Assert.Contains("1.5 or 1500?", faults[1], StringComparison.Ordinal);
        Assert.Equal("Say in words what is done, before the signs.", faults[2]);
    }

    [Fact]
    public void Two_acts_and_two_times_are_asked_about()
    {
        var faults = StepTyped.Read("cut #cut #pry 3min 4min").Faults.Select(fault => fault.Say);
        Assert.Equal(["There are two acts; a step has one. Note two steps, or write ## for the sign itself.", "There are two times; a step has one. A time that belongs to a setting stands there behind a comma or \"for\": ~110C for 5min."], faults);
    }

    [Fact]
    public void A_field_beside_the_line_writes_into_it()
    {
        var typed = StepTyped.With("cut the seam @knife 4min", StepTyped.ToolSign, "ceramic blade");
        Assert.Equal("cut the seam 4min @ceramic blade", typed);
        Assert.Equal("cut the seam 4min @ceramic blade #cut", StepTyped.With(typed, StepTyped.ActSign, "cut"));
        Assert.Equal("cut the seam 4min", StepTyped.With(typed, StepTyped.ToolSign, ""));
    }

    [Fact]
    public void What_to_record_first_is_asked_as_often_as_needed() =>
        Assert.Equal(["mass:whole", "picture of the seam"], StepTyped.Read("cut the seam !seal ?mass:whole ?picture of the seam ?mass:whole").Value.RecordFirst);
}
