using Lidoff.Bench.Rooms.See.Typed;

namespace Lidoff.Bench.Tests.Rooms.See;

/// <summary>The pitch of a target as it is typed.</summary>
public sealed class TargetTypedTests
{
    [Theory]
    // Without a doubt that of a laser print, 0.4 %; of glass 0.06 % (both from memory).
    [InlineData("2 mm", 2, 0.008, null, null)]
    [InlineData("2.54 mm, printed", 2.54, 0.01016, null, null)]
    [InlineData("1 mm, glass", 1, 0.0006, null, null)]
    [InlineData("2 mm ± 0.01, height 1.6 mm, camera 180 mm", 2, 0.01, 1.6, 180.0)]
    [InlineData("0.5 mm ± 0.001, glass", 0.5, 0.001, null, null)]
    public void It_reads(string text, double pitch, double u, double? height, double? camera)
    {
        var typed = TargetTyped.Read(text).Value;
        Assert.Equal(pitch, typed.PitchMm, 1e-12);
        Assert.Equal(u, typed.UMm, 1e-9);
        Assert.Equal((height, camera), (typed.HeightMm, typed.CameraMm));
    }

    [Fact]
    public void What_is_wrong_is_said_together()
    {
        var faults = TargetTyped.Read("0 mm, wood").Faults.Select(fault => fault.Say).ToList();
        Assert.Equal(2, faults.Count);
        Assert.Contains(faults, say => say.Contains("not above zero", StringComparison.Ordinal));
        Assert.Contains(faults, say => say.Contains("wood", StringComparison.Ordinal));
        Assert.StartsWith("How long is it?", Assert.Single(TargetTyped.Read("").Faults).Say, StringComparison.Ordinal);
    }
}
