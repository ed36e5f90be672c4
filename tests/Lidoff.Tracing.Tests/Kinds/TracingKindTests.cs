using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.TestSupport;
using Lidoff.Tracing.Kinds;

namespace Lidoff.Tracing.Tests.Kinds;

public sealed class TracingKindTests
{
    public static TheoryData<IEvidenceKind, string> GoodLines => new()
    {
        { new TouchKind(), """{"a":"U3.13","b":"GND","beep":true,"threshold_ohm":40}""" },
        { new TouchKind(), """{"a":"U3.13","b":"GND","ohms":0.4,"u_ohm":0.1,"volts":0.001,"u_v":0.001}""" },
        { new TouchKind(), """{"a":"U3.13","b":"C4.1","open":true,"beep":false,"threshold_ohm":40}""" },
        { new BusKind(), """{"type":"i2c","address":"0x68","spot":"U3","acks":40,"nacks":0}""" },
        { new IdentityKind(), """{"spot":"U3","address":"0x68","reg":"0x75","value":"0x71"}""" },
        // Where a published header has a radio chip's part number (nRF52832: FICR INFO.PART, read over its debug port).
        { new IdentityKind(), """{"spot":"U1","reg":"0x10000100","value":"0x00052832"}""" },
        { new PinsKind(), """{"spot":"U3","count":48,"ground":[13,45,49]}""" },
        { new PinsKind(), """{"spot":"U3","ground":["A4","B1"]}""" },
        { new SupplyKind(), """{"spot":"U3","pin":"48","v":3.0,"u_v":0.01}""" },
        { new NetKind(), """{"net":"VBAT","points":["U3.13","C4.1"],"why":"one pour"}""" },
        { new RailKind(), """{"rail":"VSYS","v":3.3,"u_v":0.02,"from":"U2","to":["U1","U4"],"net":"VSYS","why":"coil beside it","dropped":false}""" },
        { new PadKind(), """{"spot":"U3","pad":"13","name":"VDD","role":"power_in","side":"top","picture":"top.jpg","point":[120.5,80]}""" },
        { new PadKind(), """{"pad":"TP5"}""" },
    };

    [Theory]
    [MemberData(nameof(GoodLines))]
    public void A_kind_keeps_its_promises(IEvidenceKind kind, string line) => Assert.Empty(KindLines.Complaints(kind, line));

    [Fact]
    public void The_contracts_touch_line_reads() => Assert.Equal(
        new TouchSighting(new TouchPoint("U3.13"), new TouchPoint("GND"), true, 40, null, null, null, null, false),
        KindLines.Read(new TouchKind(), """{"kind":"touch","a":"U3.13","b":"GND","beep":true,"threshold_ohm":40}"""));

    [Theory]
    [InlineData("U3.13", "U3", "13")]
    [InlineData("J12.A4", "J12", "A4")]
    [InlineData("GND", "", "")]
    [InlineData("3.3V", "", "")]
    [InlineData("U3.", "", "")]
    [InlineData("U.3", "", "")]
    [InlineData("VDD_1.8", "", "")]
    public void A_point_is_a_pin_of_a_spot_or_a_name(string text, string spot, string pin)
    {
        var point = new TouchPoint(text);
        Assert.Equal((spot, pin), (point.Spot, point.Pin));
    }

    [Fact]
    public void A_bus_answer_reads() =>
        Assert.Equal(new BusSighting(BusType.I2c, 0x68, "U3", 40, null), KindLines.Read(new BusKind(), """{"type":"i2c","address":"0x68","spot":"U3","acks":40}"""));

    [Fact]
    public void An_identity_register_reads()
    {
        Assert.Equal(new IdentitySighting("U3", null, 0x75, 0x71), KindLines.Read(new IdentityKind(), """{"spot":"U3","reg":"0x75","value":"0x71"}"""));
        Assert.Equal(ulong.MaxValue, KindLines.Read(new IdentityKind(), """{"address":"0x68","reg":"0x0","value":"0xFFFFffffFFFFffff"}""").Value);
    }

    // A hand meter good to 0.5 % at 3 V, 15 mV, with a digit of 10 mV: sqrt(15² + 10²) = 18 mV (common practice, no source).
    [Fact]
    public void A_supply_without_doubt_has_a_hand_meters() => Assert.Equal(0.018, KindLines.Read(new SupplyKind(), """{"spot":"U3","v":3.0}""").UV, 0.0025);

    [Fact]
    public void Pins_on_ground_are_numbers_or_balls() =>
        Assert.Equal(["13", "A4"], KindLines.Read(new PinsKind(), """{"spot":"U3","ground":[13,"A4"]}""").Ground);

    [Fact]
    public void A_net_drawn_by_hand_is_a_decision()
    {
        Assert.Equal(EntryRole.Decision, new NetKind().Role);
        Assert.Equal(
            new NetDrawn("VBAT", [new TouchPoint("U3.13"), new TouchPoint("C4.1")], ""),
            KindLines.Read(new NetKind(), """{"net":"VBAT","points":["U3.13"," C4.1 "]}"""));
    }

    [Fact]
    public void A_rail_drawn_by_hand_is_a_decision()
    {
        Assert.Equal(EntryRole.Decision, new RailKind().Role);
        Assert.Equal(
            new RailDrawn("VSYS", 3.3, null, "U2", ["U1", "U4"], "", "", false),
            KindLines.Read(new RailKind(), """{"rail":"VSYS","v":3.3,"from":" U2","to":["U1 ","U4"]}"""));
    }

    [Fact]
    public void A_pad_is_a_point_that_touches_can_name()
    {
        Assert.Equal(
            new PadSighting("U3", "13", "VDD", "power_in", PadSide.Top, "top.jpg", new PicturePoint(120.5, 80)),
            KindLines.Read(new PadKind(), """{"spot":"U3","pad":"13","name":"VDD","role":"power_in","side":"top","picture":"top.jpg","point":[120.5,80]}"""));
        Assert.Equal("U3.13", KindLines.Read(new PadKind(), """{"spot":"U3","pad":"13"}""").Point.Text);
        Assert.Equal("TP5", KindLines.Read(new PadKind(), """{"pad":"TP5"}""").Point.Text);
    }

    public static TheoryData<IEvidenceKind, string, string[]> BadLines => new()
    {
        { new RailKind(), """{"u_v":0.1,"from":"U2","to":["U1","U1","U2"]}""", ["\"rail\" is missing; it should be a text of 1 to 40 characters.", "\"v\" should be given when \"u_v\" is.", "\"to\" should be a list in which every spot stands once.", "\"to\" should be a list without the spot that makes the rail."] },
        { new PadKind(), """{"spot":"U3","pad":"1/3","role":"power","point":[1,2]}""", ["\"role\" should be one of power_in, power_out, input, output, bidirectional, tri_state, open_collector, open_emitter, passive, no_connect, unspecified, but here it is \"power\".", "\"picture\" should be given when \"point\" is.", "\"pad\" should be letters and digits when \"spot\" is given."] },
        { new TouchKind(), """{"a":"U3.13"}""", ["\"b\" is missing; it should be a text of 1 to 40 characters.", "\"beep\" should be given, or one of ohms, volts, open."] },
        { new TouchKind(), """{"a":"GND","b":"GND","beep":true}""", ["\"b\" should be another point than \"a\"."] },
        { new TouchKind(), """{"a":"U3.1","b":"GND","beep":true,"open":true}""", ["\"open\" should be left out when the meter beeped or read ohms."] },
        { new TouchKind(), """{"a":"U3.1","b":"GND","open":true,"threshold_ohm":40,"u_ohm":1,"u_v":1}""", ["\"beep\" should be given when \"threshold_ohm\" is.", "\"ohms\" should be given when \"u_ohm\" is.", "\"volts\" should be given when \"u_v\" is."] },
        { new TouchKind(), """{"a":"U3.1","b":"GND","ohms":-1}""", ["\"ohms\" should be a number of 0 or more, but here it is -1."] },
        { new BusKind(), """{"type":"i2c"}""", ["\"address\" should be given on i2c."] },
        { new BusKind(), """{"type":"i2c","address":"68"}""", ["\"address\" should be 0x68 or 0x44."] },
        { new BusKind(), """{"type":"i2c","address":"0xD0"}""", ["\"address\" should be 0x68."] },
        { new BusKind(), """{"type":"spi","address":"0x68"}""", ["\"address\" should be left out on a bus without 7-bit addresses."] },
        { new BusKind(), """{"type":"lin"}""", ["\"type\" should be one of i2c, spi, uart, onewire, i2s, pdm, swd, jtag, usb, but here it is \"lin\"."] },
        { new IdentityKind(), """{"spot":"U1","reg":"0x80000000","value":"0x1"}""", ["\"reg\" should be a register below 0x80000000."] },
        { new IdentityKind(), """{"reg":"75","value":"0x"}""", ["\"reg\" should be a hexadecimal number such as \"0x71\" of at most 8 digits.", "\"value\" should be a hexadecimal number such as \"0x71\" of at most 16 digits.", "\"spot\" should be given, or \"address\"."] },
        { new PinsKind(), """{"spot":"U3"}""", ["\"count\" should be given, or \"ground\"."] },
        { new PinsKind(), """{"spot":"U3","count":8,"ground":[4,4,10,"-",9]}""", ["\"ground[1]\" should be named once; 4 was there before.", "\"ground[2]\" should be a pin from 1 to 9 (the last is the thermal pad).", "\"ground[3]\" should be a pin such as 13 or \"A4\"."] },
        { new SupplyKind(), """{"spot":"U3","v":"3V0"}""", ["\"v\" should be a number from -1000 to 1000, but here it is \"3V0\"."] },
        { new NetKind(), """{"net":"VBAT","points":[]}""", ["\"points\" should be a list of 1 to 10000 texts, but here it is []."] },
        { new NetKind(), """{"net":"VBAT","points":["U3.1","U3.1"]}""", ["\"points\" should be a list in which every point stands once."] },
    };

    [Theory]
    [MemberData(nameof(BadLines))]
    public void Every_fault_of_a_line_is_named(IEvidenceKind kind, string line, string[] say) => Assert.Equal(say, KindLines.Say(kind, line));
}
