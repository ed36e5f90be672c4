using System.Text;
using System.Text.Json;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Cameras;
using Lidoff.TestSupport;

namespace Lidoff.Seeing.Tests.Kinds;

public sealed class LookKindTests
{
    private const string Good =
        """{"picture":"aa","edges":[0.1,0.02,-0.03,0.001,0.004],"edges_covariance":[1e-6,0,2e-6,0,0,3e-6,0,0,1e-7,4e-6],"words_mirrored":false,"program":"lidoff 0.1"}""";

    [Fact]
    public void A_line_reads_in_full_and_the_kind_stands_by_its_keys()
    {
        var read = KindLines.Read(new LookKind(), Good);
        var slant = read.Look.Slant!;
        Assert.Equal(0.1, slant.Turn);
        Assert.Equal([0.02, -0.03, 0.001, 0.004], slant.Seen);
        Assert.Equal((1e-7, 1e-7, 4e-6), (slant.Covariance[3, 2], slant.Covariance[2, 3], slant.Covariance[3, 3]));
        Assert.Equal(read, KindLines.Read(new LookKind(), Good));
        Assert.Empty(KindLines.Complaints(new LookKind(), Good));
    }

    [Fact]
    public void Edges_may_tell_nothing_while_words_do()
    {
        var read = KindLines.Read(new LookKind(), """{"picture":"aa","words_mirrored":true,"program":"p"}""");
        Assert.Null(read.Look.Slant);
        Assert.True(read.Look.WordsMirrored);
    }

    [Fact]
    public void What_is_written_reads_back_the_same_and_rounded()
    {
        var covariance = new double[PictureSlant.Count, PictureSlant.Count];
        for (var i = 0; i < PictureSlant.Count; i++) covariance[i, i] = 1.23456789e-6 * (i + 1);
        var seen = LookSighting.Of("aa", new(new(0.123456789, [0.01, -0.02, 0.003, 0.0004], covariance), true), "p");
        Assert.Equal(0.123457, seen.Edges[0]);
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            LookKind.WriteKeys(json, seen);
            json.WriteEndObject();
        }

        var text = Encoding.UTF8.GetString(stream.ToArray());
        Assert.Equal(seen, KindLines.Read(new LookKind(), text));
        Assert.Equal("aa", LookKind.PictureOf(stream.ToArray()));
    }

    [Theory]
    [InlineData("""{"picture":"aa","edges":[1,2],"words_mirrored":false,"program":"p"}""", "\"edges\" should be 5 numbers (direction, convergence along x and y, excess over a right angle, bend), or none.")]
    [InlineData("""{"picture":"aa","edges":[1,0,0,0,0],"words_mirrored":false,"program":"p"}""", "\"edges_covariance\" should be 10 numbers, the lower triangle of the edges' covariance row by row, where there are edges, and none without them.")]
    [InlineData("""{"picture":"aa","edges_covariance":[1,0,1,0,0,1,0,0,0,1],"words_mirrored":false,"program":"p"}""", "\"edges_covariance\" should be 10 numbers, the lower triangle of the edges' covariance row by row, where there are edges, and none without them.")]
    [InlineData("""{"picture":"aa","edges":[1,0,0,0,0],"edges_covariance":[1,2,1,0,0,1,0,0,0,1],"words_mirrored":false,"program":"p"}""", "\"edges_covariance\" should be a covariance: a symmetric, positive definite matrix.")]
    public void A_bad_line_says_what_is_wrong(string line, string expected) => Assert.Equal([expected], KindLines.Say(new LookKind(), line));
}
