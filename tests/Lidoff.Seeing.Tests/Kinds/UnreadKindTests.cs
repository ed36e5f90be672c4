using System.Text;
using System.Text.Json;
using Lidoff.Seeing.Kinds;
using Lidoff.TestSupport;

namespace Lidoff.Seeing.Tests.Kinds;

public sealed class UnreadKindTests
{
    private const string Good = """{"spot":"R1","places":[{"picture":"cc","at":[5,6]},{"picture":"dd","at":[1,2,30,40]},{"picture":"ee","at":[50,60,30,40,0.5]}],"networks":["aa","bb"],"program":"p","says":["No body."]}""";

    [Fact]
    public void A_line_reads_in_full_and_is_written_as_it_was_read()
    {
        var read = KindLines.Read(new UnreadKind(), Good);
        Assert.Equal(("R1", "dd", 40.0, "No body."), (read.Spot, read.Places[1].Picture, read.Places[1].At[3], read.Says[0]));
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            UnreadKind.WriteKeys(json, read);
            json.WriteEndObject();
        }

        Assert.Equal(Good, Encoding.UTF8.GetString(stream.ToArray()));
    }

    [Theory]
    [InlineData("[5,6]", "[5,6,7]", "\"places[0].at\" should be two numbers of a place, four of a box or five of an outline.")]
    [InlineData("\"says\":[\"No body.\"]", "\"says\":[]", "\"says\" should be a list of 1 to 20 texts")]
    public void A_bad_line_says_what_is_wrong(string good, string bad, string expected) =>
        Assert.StartsWith(expected, Assert.Single(KindLines.Say(new UnreadKind(), Good.Replace(good, bad, StringComparison.Ordinal))), StringComparison.Ordinal);
}
