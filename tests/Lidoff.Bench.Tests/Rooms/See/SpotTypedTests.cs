using Lidoff.Bench.Rooms.See.Typed;

namespace Lidoff.Bench.Tests.Rooms.See;

public sealed class SpotTypedTests
{
    private static readonly string[] Taken = ["U1", "U2", "R1", "U4"];

    // Letters: reference designations as in IEEE 315 (from memory) for electrical parts, ours for the rest; see SpotClasses.
    [Theory]
    [InlineData("", "", "U3", "", "", "")]
    [InlineData("radio beside the antenna", "", "U3", "radio beside the antenna", "", "chip")]
    [InlineData("U7 radio beside the antenna", "", "U7", "radio beside the antenna", "", "chip")]
    [InlineData("shield over the memory", "", "SH1", "shield over the memory", "", "shield")]
    [InlineData("microphone or sensor", "", "MK1", "microphone or sensor", "", "microphone")]
    [InlineData("u7", "", "U7", "", "", "")]
    [InlineData("J flat cable socket", "", "J1", "flat cable socket", "", "connector")]
    [InlineData("R 10 k pull-up", "", "R2", "10 k pull-up", "", "")]
    [InlineData("chip antenna at the edge", "", "AE1", "chip antenna at the edge", "", "antenna")]
    [InlineData("crystal 32 MHz", "", "Y1", "crystal 32 MHz", "", "crystal")]
    [InlineData("test pads near the cell", "", "TP1", "test pads near the cell", "", "test pad")]
    [InlineData("glue bead", "", "H1", "glue bead", "", "glue")]
    [InlineData("radio, because its crystal is near", "", "U3", "radio", "its crystal is near", "chip")]
    [InlineData("something flat", "seal", "H1", "something flat", "", "seal")]
    [InlineData("A chip with a bite", "", "U3", "A chip with a bite", "", "chip")]
    [InlineData("3.3 V regulator", "", "U3", "3.3 V regulator", "", "chip")]
    public void Words_and_letters_make_a_spot(string typed, string chosen, string spot, string role, string why, string kind) =>
        Assert.Equal(new SpotTyped(spot, role, why, kind), SpotTyped.Read(typed, chosen, Taken));

    [Theory]
    [InlineData("crystal, slow clock", "crystal", "Y1")]
    [InlineData("lamp, red, by the radio", "led", "D1")]
    [InlineData("white, tall coil", "coil", "L1")]
    public void What_stands_before_the_first_comma_says_what_it_is(string typed, string kind, string spot)
    {
        var read = SpotTyped.Read(typed, "", []);
        Assert.Equal((kind, spot), (read.Class, read.Spot));
    }

    [Fact]
    public void Hostile_words_are_words()
    {
        var read = SpotTyped.Read("<script>alert(1)</script> \u202E", "", Taken);
        Assert.Equal(("U3", "<script>alert(1)</script> \u202E", ""), (read.Spot, read.Role, read.Class));
    }

    [Theory]
    [InlineData("U0")]
    [InlineData("U12345")]
    [InlineData("ABCD1")]
    [InlineData("1U")]
    [InlineData("U-1")]
    public void What_is_no_designator_is_words(string typed) => Assert.Equal(("U3", typed), (SpotTyped.Read(typed, "", Taken).Spot, SpotTyped.Read(typed, "", Taken).Role));
}
