using Lidoff.Bench.Rooms.See.Typed;
using Lidoff.Seeing.Measuring.Shapes;

namespace Lidoff.Bench.Tests.Rooms.See;

public sealed class ShapeTypedTests
{
    [Theory]
    [InlineData("J1 pitch", "", "J1", ShapeKind.Pitch, "", null)]
    [InlineData("H1 hole", "U2", "H1", ShapeKind.Circle, "", null)]
    [InlineData("h1 circle bore", "", "H1", ShapeKind.Circle, "bore", null)]
    [InlineData("area", "BT1", "BT1", ShapeKind.Area, "", null)]
    [InlineData("BT1 area of the lid, height 3,2 mm", "", "BT1", ShapeKind.Area, "of the lid", 3.2)]
    [InlineData("Pitch lower row", "J2", "J2", ShapeKind.Pitch, "lower row", null)]
    public void A_line_names_the_spot_the_shape_and_which_of_it(string typed, string selected, string spot, ShapeKind shape, string what, double? height) =>
        Assert.Equal(new(spot, shape, what, height), ShapeTyped.Read(typed, selected, 5).Value);

    [Theory]
    [InlineData("J1", "", 3, "Say what the places make: circle, pitch, angle or area.")]
    [InlineData("F1 angle", "", 5, "An angle has three places (arm, corner, arm), but 5 were clicked.")]
    public void What_is_missing_is_asked_for(string typed, string selected, int places, string say) =>
        Assert.Equal(say, Assert.Single(ShapeTyped.Read(typed, selected, places).Faults).Say);

    [Fact]
    public void Without_a_spot_and_a_shape_both_are_asked_for() => Assert.Equal(2, ShapeTyped.Read("", "", 3).Faults.Count);
}
