using Lidoff.Seeing.Composing;
using Lidoff.Seeing.Vision;

namespace Lidoff.Seeing.Tests.Composing;

public sealed class VisionLibraryTests
{
    [Fact]
    public void It_is_there_on_a_machine_with_gtk() => Assert.Null(VisionLibrary.OfThisMachine.Trouble);

    // What the system's loader says where GTK is missing, and where the file itself is.
    [Theory]
    [InlineData(
        "Unable to load shared library 'OpenCvSharpExtern' or one of its dependencies. libgtk-3.so.0: cannot open shared object file: No such file or directory",
        "Focus stacks, stitching, light sets and averages are off on this machine; everything else of the room works. OpenCV wants the system library GTK 3: install it (Debian: apt-get install libgtk-3-0) and start Lidoff again.")]
    [InlineData(
        "not there",
        "Focus stacks, stitching, light sets and averages are off on this machine; everything else of the room works. OpenCV's library could not be loaded from beside the program; build it again (./lidoff). The system says: “not there”")]
    public void Where_it_is_missing_one_sentence_says_what_is_off_and_what_to_install(string system, string says)
    {
        var asked = 0;
        var library = new VisionLibrary(() =>
        {
            asked++;
            return system;
        });
        Assert.Equal(0, asked);
        using var bench = new Bench();
        for (var k = 0; k < 3; k++) bench.Add(LightBench.Picture(k * 120, k), LightBench.Width, LightBench.Height);
        var composer = new Composer(library);
        foreach (var method in Enum.GetValues<ComposeMethod>()) Assert.Equal(says, Assert.Single(composer.Make(new(method, [.. bench.Pictures]), Bench.Quiet.Instance).Faults).Say);
        Assert.Equal(1, asked);
    }
}
