using Lidoff.Bench.Typing;

namespace Lidoff.Bench.Tests.Typing;

public sealed class ReferenceTypedTests
{
    private static readonly string[] Known = ["reckoning:R1", "part:U3", "part:C1", "claim:C1", "length:U3:long side", "mass:whole"];

    [Theory]
    [InlineData("reckoning:R1", "reckoning:R1")]
    [InlineData(" r1 ", "reckoning:R1")]
    [InlineData("u3", "part:U3")]
    [InlineData("Part:u3", "part:U3")]
    [InlineData("long side", "length:U3:long side")]
    [InlineData("whole", "mass:whole")]
    // Still to be measured: a question may wait for it.
    [InlineData("length:U9:width", "length:U9:width")]
    public void A_name_that_means_one_thing_is_enough(string typed, string meant) => Assert.Equal(meant, ReferenceTyped.Read(typed, Known).Value);

    [Theory]
    [InlineData("", "Write what it leans on: R1, U3,")]
    [InlineData("C1", "\"C1\" may be part:C1 or claim:C1: write which.")]
    [InlineData("number R1", "\"number R1\" names nothing in this dossier")]
    [InlineData("length:U9", "names nothing in this dossier")]
    [InlineData("size:U9", "names nothing in this dossier")]
    public void Anything_else_is_refused_with_what_could_be_written(string typed, string says) =>
        Assert.Contains(says, ReferenceTyped.Read(typed, Known).Faults[0].Say, StringComparison.Ordinal);
}
