using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Shapes;

namespace Lidoff.Seeing.Tests.Measuring;

/// <summary>Numbers that no bench has: each is refused with its place and what would do, none of them makes arithmetic overflow or an interval reach below zero.</summary>
public sealed class BenchNumbersTests
{
    private static readonly ReferenceLength Known = Measured.Reference(100, 1500, 2100, 1500, 20, 0.02);
    private static readonly TargetLength Asked = new("t", new(500, 1500), new(1500, 1500));

    [Theory]
    [InlineData(1e300, 0, 0, "reference[0].length_mm")]
    [InlineData(1e-300, 0, 0, "reference[0].length_mm")]
    [InlineData(20, 1e300, 0, "reference[0].u_mm")]
    [InlineData(20, 0, 1e200, "reference[0].height_mm")]
    [InlineData(20, 0, -1e200, "reference[0].height_mm")]
    public void A_known_length_beyond_any_bench_is_refused(double mm, double u, double height, string where)
    {
        var fault = Assert.Single(Faults([Measured.Reference(100, 1500, 2100, 1500, mm, u, height)]));
        Assert.Equal(where, fault.Where);
        Assert.StartsWith($"“{where}” is ", fault.Say, StringComparison.Ordinal);
        Assert.Contains("it should be ", fault.Say, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1e9, null, "click_u_px", "“click_u_px” is 1e9 px; it should be 0 to 4000 px.")]
    [InlineData(1.0, 1e-9, "camera_distance_mm", "“camera_distance_mm” is 1e-9 mm; it should be 0.1 to 100000 mm.")]
    public void So_are_clicks_and_distances(double click, double? camera, string where, string says)
    {
        var faults = Faults([Known], click, camera);
        Assert.Contains(faults, fault => fault.Where == where && fault.Say == says);
    }

    [Fact]
    public void All_of_them_are_said_at_once()
    {
        var faults = Faults([Measured.Reference(100, 1500, 2100, 1500, 1e300, 1e300), Measured.Reference(100, 1500, 5000, 1500, 20)], 1, 1e30);
        Assert.Equal(["camera_distance_mm", "reference[0].length_mm", "reference[0].u_mm", "reference[1].to"], faults.Select(fault => fault.Where));
    }

    [Fact]
    public void A_known_length_within_its_own_clicks_makes_no_scale()
    {
        var fault = Assert.Single(Faults([Measured.Reference(100, 100, 101.5, 100, 20)]));
        Assert.Equal("“reference[0]” is 1.5 px long and each of its ends is clicked to 1 px: no scale comes of that. Take the longest known length in the picture.", fault.Say);
        Assert.Single(Faults([Measured.Reference(100, 100, 100.0001, 100, 20)], click: 0));
    }

    [Fact]
    public void A_camera_nearer_than_any_lens_can_be_is_told()
    {
        // 20 mm over 2000 of 4000 px: the picture shows 40 mm. From 1 mm away that is half a side at an angle of 87° (geometry): no lens on a bench.
        var fault = Assert.Single(Faults([Known], camera: 1));
        Assert.Equal("camera_distance_mm", fault.Where);
        Assert.StartsWith("No camera can show the known lengths as they lie in the picture from 1 mm away", fault.Say, StringComparison.Ordinal);
    }

    [Fact]
    public void What_would_stand_beyond_the_camera_is_refused_by_itself()
    {
        // 40 mm wide, so the camera is some 30 to 160 mm away and never half a metre.
        var measured = Measured.All([Known], [Asked, Asked with { Id = "high", HeightMm = 500 }, Asked with { Id = "huge", HeightMm = 1e200 }]);
        Assert.True(measured[0].Length.Ok);
        var high = Assert.Single(measured[1].Length.Faults);
        Assert.Equal("height_mm", high.Where);
        Assert.StartsWith("Something 500 mm above the board would stand beyond the camera, which was about ", high.Say, StringComparison.Ordinal);
        Assert.Equal("“height_mm” is 1e200 mm; it should be -100000 to 100000 mm.", Assert.Single(measured[2].Length.Faults).Say);
    }

    [Fact]
    public void Bodies_and_shapes_are_held_to_the_same()
    {
        var picture = ScaledPicture.Of(new() { Image = "x", References = [Known], Targets = [] }, Measured.Frame).Value;
        Assert.Equal("height_mm", Assert.Single(picture.Body(new("b", [new(500, 500), new(900, 500), new(900, 800)], 500)).Faults).Where);
        Assert.Equal("height_mm", Assert.Single(picture.Shape(new("c", ShapeKind.Circle, [new(500, 500), new(900, 500), new(900, 800)], 500)).Faults).Where);
        Assert.Equal("u_px", Assert.Single(picture.Body(new("b", [new(500, 500), new(900, 500), new(900, 800)], 0, 1e9)).Faults).Where);
    }

    [Fact]
    public void No_length_is_shorter_than_nothing()
    {
        // 3 px clicked to 1 px at both ends: the doubt is half the length, and a normal of that width reaches below zero.
        var length = Measured.One([Known], new("t", new(500, 1500), new(503, 1500)), click: 3);
        Assert.Equal(0, length.LowMm);
        Assert.InRange(length.HighMm, 0.03, 0.12);
    }

    private static IReadOnlyList<Fault> Faults(IReadOnlyList<ReferenceLength> references, double click = 1, double? camera = null)
    {
        var run = Measurement.Run(new() { Image = "x", References = references, Targets = [new("t", Asked)], ClickPx = click, CameraDistanceMm = camera }, Measured.Frame);
        Assert.False(run.Ok);
        return run.Faults;
    }
}
