using Lidoff.Naming.Knowing;

namespace Lidoff.Naming.Tests.Knowing;

public class PartFamilyTests
{
    // Facts of the trade: makers' own families and parts that do and do not belong to them.
    [Theory]
    [InlineData("STM32L4", "STM32L476RG", true)]
    [InlineData("STM32L4", "STM32L072CZ", false)]
    [InlineData("TPS6274x", "TPS62743", true)]
    [InlineData("TPS6274x", "TPS62840", false)]
    [InlineData("STM32F4xx", "STM32F407VG", true)]
    [InlineData("STM32F4x5", "STM32F405RG", true)]
    [InlineData("STM32F4x5", "STM32F407VG", false)]
    [InlineData("nRF52", "nRF52832", true)]
    [InlineData("nRF52", "nRF51822", false)]
    [InlineData("mpu-6", "MPU-6500", true)]
    [InlineData("MAX30", "MAX30102", true)]
    [InlineData("KXTJ3", "KXTJ3-1057", true)]
    public void A_family_holds_what_begins_as_it_does(string family, string part, bool holds) => Assert.Equal(holds, PartFamily.Holds(family, part));

    [Fact]
    public void A_wide_family_covers_a_narrow_one()
    {
        Assert.True(PartFamily.Covers("TPS62", "TPS6274x"));
        Assert.True(PartFamily.Covers("TPS62xxx", "TPS6274x"));
        Assert.False(PartFamily.Covers("TPS6274x", "TPS62"));
    }
}
