using Lidoff.Evidence.Entries;
using Lidoff.Opening.Cautioning;
using Lidoff.Opening.Kinds;
using Lidoff.TestSupport;

namespace Lidoff.Opening.Tests.Kinds;

public sealed class OpeningKindTests
{
    public static TheoryData<IEvidenceKind, string> GoodLines => new()
    {
        { new SpecimenKind(), """{"specimen":"A","says":"collar lamp","from":"flea market","bought":"2026-01-12","revision":"EU, black","may_destroy":true,"mass_g":18.42,"u_g":0.01}""" },
        { new SpecimenKind(), """{"specimen":"A"}""" },
        { new StepKind(), """{"does":"cut the seam","act":"cut","tool":"ultrasonic cutter","setting":"60 %","minutes":12.5,"destroys":"the seal","picture":"seam.jpg"}""" },
        { new StateKind(), """{"name":"idle","says":"blinks","lights":"blue, every 2 s","buttons":"long press","lasts_s":600,"current_ua":-120,"u_ua":3}""" },
        { new MassKind(), """{"spot":"BT1","g":3.61,"u_g":0.005}""" },
        { new CellKind(), """{"spot":"BT1","volts":3.84,"u_v":0.01,"ohms":0.3,"printed":"401725 120mAh","mm":[25.1,17.2,4.1],"u_mm":0.1,"wires":3,"connected":false,"damaged":false}""" },
        { new StepKind(), """{"does":"cut the seam","plan":"P1"}""" },
        { new PlanKind(), """{"plan":"P1","does":"cut the seam","act":"cut","destroys":"the seal","record_first":["mass:CASE","leak test"],"recorded":["leak test"],"after":["P0"],"why":"no screws","dropped":false}""" },
        { new PauseKind(), """{"in_hand":"the lower shell","next":"lift the cell","checked":["heat-off","cell-disconnected"],"note":"glue still soft"}""" },
    };

    [Theory]
    [MemberData(nameof(GoodLines))]
    public void A_kind_keeps_its_promises(IEvidenceKind kind, string line) => Assert.Empty(KindLines.Complaints(kind, line));

    [Fact]
    public void A_specimen_reads() => Assert.Equal(
        new SpecimenSighting("A", "collar lamp", "", new DateOnly(2026, 1, 12), "", null, 18.42, 0.01),
        KindLines.Read(new SpecimenKind(), """{"specimen":"A","says":"collar lamp","bought":"2026-01-12","mass_g":18.42}"""));

    [Fact]
    public void A_step_reads() => Assert.Equal(
        new StepSighting("cut the seam", StepAct.Cut, "", "", null, "the seal", ""),
        KindLines.Read(new StepKind(), """{"does":"cut the seam","act":"cut","destroys":"the seal"}"""));

    [Fact]
    public void A_step_without_an_act_is_some_other_act() =>
        Assert.Equal(StepAct.Other, KindLines.Read(new StepKind(), """{"does":"had tea"}""").Act);

    // A pocket scale and a hand meter show hundredths and are trusted to about one; a soft pouch gives a tenth under the calliper: common
    // practice, no source.
    [Fact]
    public void What_was_noted_without_doubt_has_its_instruments()
    {
        Assert.Equal(0.01, KindLines.Read(new MassKind(), """{"g":3.61}""").UG);
        var cell = KindLines.Read(new CellKind(), """{"volts":3.84,"mm":[25.1,17.2,4.1]}""");
        Assert.Equal((0.01, 0.1), (cell.UV, cell.UMm));
    }

    [Fact]
    public void A_cell_reads()
    {
        var cell = KindLines.Read(new CellKind(), """{"volts":3.84,"printed":"0.45 Wh","mm":[25.1,17.2,4.1],"connected":true}""");
        Assert.Equal((3.84, 0.01, "0.45 Wh", 0.1, true), (cell.Volts, cell.UV, cell.Printed, cell.UMm, cell.Connected));
        Assert.Equal([25.1, 17.2, 4.1], cell.Mm);
    }

    [Fact]
    public void A_plan_reads() => Assert.Equal(
        new StepPlanned("P1", "cut the seam", StepAct.Cut, "the seal", ["mass:CASE"], [], ["P0"], "", false),
        KindLines.Read(new PlanKind(), """{"plan":" P1 ","does":"cut the seam","act":"cut","destroys":"the seal","record_first":["mass:CASE"],"after":["P0"]}"""));

    [Fact]
    public void A_plan_is_dropped_by_its_name_alone() =>
        Assert.Equal(new StepPlanned("P1", "", StepAct.Other, "", [], [], [], "", true), KindLines.Read(new PlanKind(), """{"plan":"P1","dropped":true}"""));

    [Fact]
    public void A_pause_reads() => Assert.Equal(
        new BenchLeft("the lower shell", "", ["heat-off"], ""),
        KindLines.Read(new PauseKind(), """{"in_hand":"the lower shell","checked":["heat-off","heat-off"]}"""));

    [Fact]
    public void A_step_says_which_plan_it_carried_out() => Assert.Equal("P1", KindLines.Read(new StepKind(), """{"does":"cut","plan":"P1"}""").Plan);

    // Lights, button timings and charging are what a device shows before it is opened.
    [Fact]
    public void A_state_holds_lights_button_timings_and_charging() => Assert.Equal(
        new StateSighting("charging", "", "amber, 1 Hz", "3 s press: off", 5400, -60_000, 500),
        KindLines.Read(new StateKind(), """{"name":"charging","lights":"amber, 1 Hz","buttons":"3 s press: off","lasts_s":5400,"current_ua":-60000,"u_ua":500}"""));

    public static TheoryData<IEvidenceKind, string, string[]> BadLines => new()
    {
        { new PlanKind(), """{"plan":"P1"}""", ["\"does\" is missing; it should be a text of 1 to 2000 characters."] },
        { new PlanKind(), """{"plan":"P1","does":"cut","record_first":["a","a"],"recorded":["b"],"after":["P1"]}""", ["\"record_first\" should be a list in which everything stands once.", "\"recorded\" should be a list of things that stand in \"record_first\".", "\"after\" should be a list of other plans."] },
        { new PauseKind(), "{}", ["\"in_hand\" should be given, or one of next, checked, note."] },
        { new PauseKind(), """{"checked":["cat-fed"]}""", ["\"checked\" should be a list of heat-off, cell-disconnected, cell-safe, supply-off, blades-covered, solvents-closed, specimens-labelled, pictures-in, in-hand-noted."] },
        { new SpecimenKind(), """{"bought":"12.1.2026","mass_g":0}""", ["\"specimen\" is missing; it should be a text of 1 to 40 characters.", "\"bought\" should be a day such as \"2026-01-12\".", "\"mass_g\" should be a number above 0, but here it is 0."] },
        { new MassKind(), """{"g":"3,61"}""", ["\"g\" should be a number above 0, but here it is \"3,61\"."] },
        { new StateKind(), """{"name":"idle","u_ua":3}""", ["\"current_ua\" should be given when \"u_ua\" is."] },
        { new CellKind(), """{"spot":"BT1"}""", ["\"volts\" should be given, or one of ohms, printed, mm, wires, connected, damaged."] },
        { new CellKind(), """{"mm":[25,17]}""", ["\"mm\" should be a list of 3 numbers above 0, but here it is [25,17]."] },
        { new StepKind(), """{"act":"saw","minutes":-1}""", ["\"does\" is missing; it should be a text of 1 to 2000 characters.", "\"act\" should be one of buy, look, xray, cut, pry, heat, cell, charge, supply, solvent, coating, grind, solder, board, probe, drive, thermal, memory, strain, transmit, person, reuse, publish, dispose, other, but here it is \"saw\".", "\"minutes\" should be a number of 0 or more, but here it is -1."] },
    };

    [Theory]
    [MemberData(nameof(BadLines))]
    public void Every_fault_of_a_line_is_named(IEvidenceKind kind, string line, string[] say) => Assert.Equal(say, KindLines.Say(kind, line));
}
