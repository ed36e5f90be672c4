using Lidoff.Seeing.Standards;

namespace Lidoff.Seeing.Tests.Standards;

public sealed class SnapTests
{
    [Theory]
    // Bodies of published outlines (JEDEC MO-220, MS-012, MO-153, MO-178; makers' package drawings).
    [InlineData(4.01, 0.02, 4.0)]
    [InlineData(5.02, 0.02, 5.0)]
    [InlineData(9.02, 0.03, 9.0)]
    [InlineData(3.89, 0.02, 3.9)]
    [InlineData(4.41, 0.02, 4.4)]
    [InlineData(2.91, 0.02, 2.9)]
    public void A_calliper_on_a_standard_body_snaps(double mm, double u, double standard)
    {
        var snap = StandardRank.Snap(mm, u, StandardSizes.BodySizes);
        Assert.Equal((standard, "body"), (snap!.Mm, snap.Kind));
        Assert.True(snap.LikelihoodRatio >= 10);
    }

    [Theory]
    // Between two steps, a wafer-level body of no step (2.245 mm by its drawing), and too much doubt for half-millimetre steps.
    [InlineData(6.25, 0.02)]
    [InlineData(2.245, 0.01)]
    [InlineData(5.2, 0.3)]
    public void What_no_standard_explains_ten_to_one_does_not_snap(double mm, double u) => Assert.Null(StandardRank.Snap(mm, u, StandardSizes.BodySizes));

    [Fact]
    public void The_contracts_example_comes_out_as_it_stands_there()
    {
        // docs/contracts.md: 6.98 ± 0.06 mm is a 7.0 mm body at 38 to 1; the exact ratio is this program's own prior.
        var snap = StandardRank.Snap(6.98, 0.06, StandardSizes.For("U1 width"))!;
        Assert.Equal(7.0, snap.Mm);
        Assert.InRange(snap.LikelihoodRatio, 30, 46);
    }

    [Fact]
    public void One_gap_cannot_tell_1_25_from_1_27_and_a_fine_one_can()
    {
        Assert.Null(StandardRank.Snap(1.26, 0.02, StandardSizes.For("pitch of J1")));
        Assert.Equal((1.27, "pitch"), (StandardRank.Snap(1.27, 0.004, StandardSizes.For("pitch of J1"))!.Mm, "pitch"));
    }
}
