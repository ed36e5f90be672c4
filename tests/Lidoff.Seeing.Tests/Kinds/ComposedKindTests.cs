using Lidoff.Seeing.Composing;
using Lidoff.Seeing.Kinds;
using Lidoff.TestSupport;

namespace Lidoff.Seeing.Tests.Kinds;

public sealed class ComposedKindTests
{
    private const string Good =
        """{"picture":"aa","second":"bb","method":"stack","inputs":["11","22","33"],"left_out":["44"],"settings":"s","program":"lidoff 0.1","first_at":[12,-3.5],"rest_px":0.42,"loop_px":0.9,"heights_mm":[0,2],"says":["x"]}""";

    [Fact]
    public void A_line_reads_in_full_and_the_kind_stands_by_its_keys()
    {
        var read = KindLines.Read(new ComposedKind(), Good);
        Assert.Equal((ComposeMethod.Stack, "bb", 0.42, 0.9, true), (read.Method, read.Second, read.RestPx, read.LoopPx, read.HeightsInMm));
        Assert.Equal(["11", "22", "33"], read.Inputs);
        Assert.Equal(new(12, -3.5), read.FirstAt);
        Assert.Equal((0.0, 2.0), read.Heights);
        Assert.Equal(read, KindLines.Read(new ComposedKind(), Good));
        Assert.Empty(KindLines.Complaints(new ComposedKind(), Good));
    }

    [Fact]
    public void Every_method_has_a_word() => Assert.Equal(Enum.GetValues<ComposeMethod>().Order(), ComposedKind.Methods.Select(each => each.Method).Order());

    [Fact]
    public void A_bad_line_says_what_is_wrong() => Assert.Equal(
        [
            "\"method\" should be one of stack, stitch, lights, average, but here it is \"glue\".",
            "\"inputs\" should be a list of 2 to 100 texts, but here it is [\"11\"].",
            "\"rest_px\" should be a number of 0 or more, but here it is -1.",
            "\"heights_mm\" should be heights in mm or in slices, not both.",
        ],
        KindLines.Say(new ComposedKind(), """{"picture":"aa","method":"glue","inputs":["11"],"settings":"s","program":"p","rest_px":-1,"heights_mm":[0,1],"heights_slices":[1,3]}"""));
}
