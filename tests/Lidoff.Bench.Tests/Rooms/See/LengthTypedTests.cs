using Lidoff.Bench.Rooms.See;
using Lidoff.Bench.Rooms.See.Typed;
using Lidoff.Evidence.Pictures;

namespace Lidoff.Bench.Tests.Rooms.See;

public sealed class LengthTypedTests
{
    [Theory]
    [InlineData("6 mm ± 0.05, package of U1", "U1")]
    [InlineData("6 ± 0,05, height 0.8 mm, package u12", "U12")]
    public void A_known_length_may_be_a_recognised_package(string typed, string spot) => Assert.Equal(spot, ScaleTyped.Read(typed).Value.Package);

    [Theory]
    [InlineData("6 mm, package of it all")]
    [InlineData("6 mm, package U1, package U2")]
    public void A_package_of_no_one_spot_is_asked_for(string typed) =>
        Assert.Equal("Whose package is it? One spot's letter and number, as in package of U1.", Assert.Single(ScaleTyped.Read(typed).Faults).Say);

    [Theory]
    [InlineData("26 mm ± 0.05", 26, 0.05, null, null)]
    [InlineData("26", 26, null, null, null)]
    [InlineData("26,5 mm +/- 0,1", 26.5, 0.1, null, null)]
    // The inch is 25.4 mm by definition (international yard and pound agreement, 1959).
    [InlineData("1 in", 25.4, null, null, null)]
    [InlineData("0.5 mm ± 10 µm, height 1.2 mm, camera 180 mm", 0.5, 0.01, 1.2, 180.0)]
    [InlineData("5.5 mm; height 1", 5.5, null, 1.0, null)]
    public void A_known_length_is_read_as_people_type_it(string typed, double mm, double? u, double? height, double? camera) =>
        Assert.Equal(new ScaleTyped(mm, u, height, camera, ""), ScaleTyped.Read(typed).Value);

    [Fact]
    public void What_is_wrong_with_a_known_length_is_said_all_at_once()
    {
        Assert.Equal(["How long is it? Write, for example, 26 mm ± 0.05."], ScaleTyped.Read("").Faults.Select(fault => fault.Say));
        Assert.Equal(["\"25..27 mm\" is a range; write the known length as 26 mm ± 0.05."], ScaleTyped.Read("25..27 mm").Faults.Select(fault => fault.Say));
        Assert.Equal(["\"0 mm\" is not above zero; between equal places there is no length."], ScaleTyped.Read("0 mm").Faults.Select(fault => fault.Say));
        Assert.Equal(
            ["\"-3 mm\" is not above zero; between equal places there is no length.", "\"width 2\" is not understood here; known are height 1.2 mm, camera 180 mm and package of U1."],
            ScaleTyped.Read("-3 mm, width 2").Faults.Select(fault => fault.Say));
    }

    [Theory]
    [InlineData("U1 width", "", "U1", "width", null)]
    [InlineData("u12 span of 14 leads, height 1 mm", "", "U12", "span of 14 leads", 1.0)]
    [InlineData("width", "J2", "J2", "width", null)]
    [InlineData("U3 width", "J2", "U3", "width", null)]
    public void A_length_names_its_spot_or_takes_the_selected_one(string typed, string selected, string spot, string what, double? height) =>
        Assert.Equal(new LengthTyped(spot, what, height), LengthTyped.Read(typed, selected).Value);

    [Fact]
    public void What_is_missing_of_a_length_is_said()
    {
        Assert.Equal(["Which spot does it belong to? Begin with its letter and number, as in U1 width."], LengthTyped.Read("width", "").Faults.Select(fault => fault.Say));
        Assert.Equal(["Which length of U1 is it? Write, for example, U1 width."], LengthTyped.Read("U1", "").Faults.Select(fault => fault.Say));
        Assert.Equal(["\"wide\" is not understood here; known are height 1.2 mm."], LengthTyped.ReadBody("U1 wide", "").Faults.Select(fault => fault.Say));
    }

    [Theory]
    [InlineData("U1 3,2 mm", "", "3,2 mm", "U1")]
    [InlineData("3.2 mm ± 0.1", "J2", "3.2 mm ± 0.1", "J2")]
    [InlineData("7", "U1", "7", "U1")]
    public void A_measure_is_no_name_of_a_length(string typed, string selected, string what, string spot) =>
        Assert.Equal([SeeSentences.NotItsName(what, spot)], LengthTyped.Read(typed, selected).Faults);

    [Theory]
    [InlineData("U1", "", null)]
    [InlineData("", "U1", null)]
    [InlineData("height 0.85 mm", "U1", 0.85)]
    public void A_body_needs_a_spot_and_may_have_a_height(string typed, string selected, double? height) =>
        Assert.Equal(new LengthTyped("U1", "", height), LengthTyped.ReadBody(typed, selected).Value);

    [Fact]
    public void The_longer_side_of_a_body_is_the_long_one_whichever_was_clicked_first()
    {
        var body = new LengthTyped("U1", "", null);
        var lines = Bench.Working.Line.Written(body.Sides("ab", new PicturePoint(0, 0), new(0, 40), new(70, 40), 6.5));
        var text = System.Text.Encoding.UTF8.GetString(lines.Span).Split('\n');
        Assert.Contains("\"what\":\"short side\"", text[0], StringComparison.Ordinal);
        Assert.Contains("\"to\":[0,40]", text[0], StringComparison.Ordinal);
        Assert.Contains("\"what\":\"long side\"", text[1], StringComparison.Ordinal);
        Assert.All(text[..2], line => Assert.Contains("\"click_u_px\":6.5", line, StringComparison.Ordinal));
    }
}
