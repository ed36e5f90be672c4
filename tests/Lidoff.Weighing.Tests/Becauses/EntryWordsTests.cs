using Lidoff.Weighing.Becauses;
using Lidoff.Weighing.Tests.Modelling;

namespace Lidoff.Weighing.Tests.Becauses;

/// <summary>Each kind of entry in one sentence: numbers as they were noted, with their units.</summary>
public sealed class EntryWordsTests : IDisposable
{
    private readonly Bench bench = new();

    public void Dispose() => bench.Dispose();

    [Theory]
    [InlineData("""{"kind":"scale","picture":"top.png","from":[0.25,0],"to":[1000,0],"length_mm":20.5,"u_mm":0.0005}""", "a known length of 20.5 ± 0.0005 mm in top.png, from (0.3, 0) to (1000, 0) px.")]
    [InlineData("""{"kind":"scale","picture":"top.png","from":[0,0],"to":[1000,0],"length_mm":20.5,"carried_from":"under.png"}""", "a known length of 20.5 mm in top.png, from (0, 0) to (1000, 0) px, carried over from under.png.")]
    [InlineData("""{"kind":"scale","picture":"top.png","from":[0,0],"to":[1000,0],"length_mm":20.5,"u_mm":2.5e-7}""", "a known length of 20.5 ± 2.5E-7 mm in top.png, from (0, 0) to (1000, 0) px.")]
    [InlineData("""{"kind":"length","spot":"U1","what":"width","mm":3.2,"u_mm":0,"instrument":"gauge block"}""", "width of U1: 3.2 mm with gauge block.")]
    [InlineData("""{"kind":"body","spot":"U1","mm":[6,6],"u_mm":0}""", "body of U1: 6 × 6 mm.")]
    [InlineData("""{"kind":"length","spot":"U1","what":"width","picture":"top.png","from":[0,0],"to":[350,12.5]}""", "width of U1 clicked in top.png, from (0, 0) to (350, 12.5) px.")]
    [InlineData("""{"kind":"length","spot":"U1","what":"width","mm":3.2,"u_mm":0.015,"instrument":"calliper"}""", "width of U1: 3.2 ± 0.015 mm with calliper.")]
    [InlineData("""{"kind":"length","spot":"U1","what":"width","mm":3.2,"u_mm":0.015}""", "width of U1: 3.2 ± 0.015 mm with an instrument.")]
    [InlineData("""{"kind":"landmark","landmark":"H1","picture":"top.png","point":[120.25,80]}""", "landmark H1 in top.png at (120.3, 80) px.")]
    [InlineData("""{"kind":"landmark","landmark":"H1","mm":[2.5,2.0004]}""", "landmark H1, known to lie at (2.5, 2.0004) ± 0.03 mm.")]
    [InlineData("""{"kind":"mark","spot":"U1","lines":["N52832","QFAA?0"]}""", "mark on U1: N52832/QFAA?0.")]
    [InlineData("""{"kind":"body","spot":"U1","mm":[6.01,6],"u_mm":0.02}""", "body of U1: 6.01 × 6 mm, each ± 0.02.")]
    [InlineData("""{"kind":"pitch","spot":"U1","mm":0.4,"u_mm":0.0004,"leads":12}""", "pitch of U1: 0.4 ± 0.0004 mm.")]
    [InlineData("""{"kind":"spot","spot":"U1","role":"radio"}""", "spot U1: radio.")]
    [InlineData("""{"kind":"spot","spot":"U1"}""", "spot U1.")]
    [InlineData("""{"kind":"picture","file":"top.png"}""", "top.png is a picture of the specimen.")]
    [InlineData("""{"kind":"burst","burst":"B1","frames":["aa","bb","cc"]}""", "burst B1 of 3 frames.")]
    [InlineData("""{"kind":"recording","recording":"V1","file":"aa","voice":true}""", "recording V1 with voice.")]
    [InlineData("""{"kind":"moment","recording":"V1","second":12.25,"spot":"U1","says":"the lamp comes on"}""", "moment at 12.25 s of V1, U1: the lamp comes on.")]
    [InlineData("""{"kind":"moment","recording":"V1","second":0}""", "moment at 0 s of V1.")]
    [InlineData("""{"kind":"still","file":"top.png","video":"V1.webm","second":3.4}""", "top.png is the frame at 3.4 s of V1.webm.")]
    [InlineData("""{"kind":"reckon","reckoning":"R1","calculation":"runtime","inputs":{"capacity":{"from":"R2"},"sleep_current":"6.1 µA"}}""", "reckoning R1: runtime of capacity R2, sleep_current 6.1 µA.")]
    [InlineData("""{"kind":"decide","spot":"U1","accept":"ZX52832","why":"read under raking light"}""", "decision on U1: accepted as ZX52832, because read under raking light.")]
    [InlineData("""{"kind":"decide","spot":"U1","accept_family":"ZX52","why":"the maker's sign"}""", "decision on U1: accepted as one of the family ZX52, because the maker's sign.")]
    [InlineData("""{"kind":"alike","spot":"U1","specimens":["A","B"],"why":"same order code"}""", "specimens A, B are alike at U1, because same order code.")]
    [InlineData("""{"kind":"pins","spot":"U1","count":48,"ground":[31,"A4"]}""", "pins of U1: 48, on ground 31, A4.")]
    [InlineData("""{"kind":"pins","spot":"U1","ground":[31]}""", "pins of U1: not counted, on ground 31.")]
    [InlineData("""{"kind":"bus","type":"i2c","address":"0x0c","spot":"U1"}""", "U1 answered on a bus at 0x0c.")]
    [InlineData("""{"kind":"identity","spot":"U1","reg":"0x9f","value":"0xef4016"}""", "U1 returned 0xef4016 from register 0x9f.")]
    [InlineData("""{"kind":"supply","spot":"U1","v":1.802,"u_v":0.0004}""", "supply of U1: 1.802 ± 0.0004 V.")]
    [InlineData("""{"kind":"mass","spot":"B1","g":0.0004,"u_g":0.0001}""", "mass of B1: 0.0004 ± 0.0001 g.")]
    [InlineData("""{"kind":"mass","g":21.4,"u_g":0.05}""", "mass of the whole: 21.4 ± 0.05 g.")]
    [InlineData("""{"kind":"touch","a":"U1.1","b":"GND","beep":true,"ohms":0.0004}""", "touch of U1.1 and GND: beep, 0.0004 Ω.")]
    [InlineData("""{"kind":"touch","a":"U1.1","b":"GND","volts":0.00012}""", "touch of U1.1 and GND: 0.00012 V.")]
    [InlineData("""{"kind":"touch","a":"U1.1","b":"GND","open":true,"beep":false}""", "touch of U1.1 and GND: open, no beep.")]
    [InlineData("""{"kind":"net","net":"VBAT","points":["U3.13","C4.1"]}""", "net VBAT drawn by hand: U3.13, C4.1.")]
    [InlineData("""{"kind":"rail","rail":"VSYS","from":"U4","to":["U1","U2"]}""", "rail VSYS from U4 to U1, U2.")]
    [InlineData("""{"kind":"rail","rail":"V18","v":1.8,"u_v":0.02,"from":"U4"}""", "rail V18, 1.8 ± 0.02 V, from U4.")]
    [InlineData("""{"kind":"rail","rail":"VX","v":5}""", "rail VX, 5 V.")]
    [InlineData("""{"kind":"pad","spot":"U3","pad":"13","name":"VDD"}""", "pad U3.13: VDD.")]
    [InlineData("""{"kind":"specimen","specimen":"A","says":"collar lamp"}""", "specimen A: collar lamp.")]
    [InlineData("""{"kind":"state","name":"off","current_ua":0.0004,"u_ua":0.0002}""", "state off, 0.00040 ± 0.00020 µA.")]
    [InlineData("""{"kind":"state","name":"idle","current_ua":85000,"u_ua":4000}""", "state idle, 85.0 ± 4.0 mA.")]
    [InlineData("""{"kind":"state","name":"charging","says":"amber","current_ua":-90000}""", "state charging: amber, −90 mA.")]
    [InlineData("""{"kind":"step","does":"cut the seam","destroys":"the seal"}""", "step: cut the seam; destroyed the seal.")]
    [InlineData("""{"kind":"plan","plan":"P1","does":"cut the seam"}""", "plan P1: cut the seam.")]
    [InlineData("""{"kind":"plan","plan":"P1","does":"cut the seam","record_first":["mass:whole"],"recorded":["mass:whole"]}""", "plan P1: cut the seam, recorded: mass:whole.")]
    [InlineData("""{"kind":"plan","plan":"P1","dropped":true}""", "plan P1, dropped.")]
    [InlineData("""{"kind":"pause","in_hand":"the lower shell"}""", "bench left: the lower shell.")]
    [InlineData("""{"kind":"cell","spot":"B1","volts":3.8725,"connected":false,"damaged":true}""", "cell B1, 3.8725 V, disconnected, damaged.")]
    [InlineData("""{"kind":"cell","ohms":0.42,"printed":"0.67 Wh","mm":[20.1,14.9,4]}""", "cell, 0.42 Ω inside, printed “0.67 Wh”, 20.1 × 14.9 × 4 mm.")]
    [InlineData("""{"kind":"question","question":"Q1","text":"Who made it?"}""", "question Q1: Who made it?")]
    [InlineData("""{"kind":"question","question":"Q1","dropped":true}""", "question Q1, dropped")]
    public void An_entry_says_in_one_sentence_what_was_noted(string line, string says)
    {
        var id = bench.Note(line)[0].Id;
        Assert.Equal(says, EntryWords.Say(new EntryPayloads(bench.View).Of(id)));
    }

    [Fact]
    public void A_file_says_how_long_it_is()
    {
        var id = bench.Picture("top.png").Id;
        Assert.Equal("file top.png, 10 bytes.", EntryWords.Say(new EntryPayloads(bench.View).Of(id)));
    }

    [Fact]
    public void What_has_no_sentence_is_as_written() => Assert.Equal("as written.", EntryWords.Say(null));
}
