using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Tests.Entries;

public class PayloadReaderTests
{
    private sealed record Body(string Spot, double A, double B, double? Height, ValueList<(double X, double Y)> Outline);

    private static Outcome<Body> Read(string json)
    {
        using var document = JsonDocument.Parse(json);
        var read = new PayloadReader(document.RootElement);
        var spot = read.Text("spot");
        var (a, b) = read.Pair("mm", NumberRange.Positive);
        var height = read.OptionalNumber("height_mm", NumberRange.NotNegative);
        var outline = read.Points("outline");
        return read.Done(() => new Body(spot, a, b, height, outline));
    }

    private static string[] Say<T>(Outcome<T> outcome) => outcome.Faults.Select(f => f.Say).ToArray();

    [Fact]
    public void Good_keys_become_a_record_with_value_equality()
    {
        var first = Read("""{"spot":"U3","mm":[6.01,6.00],"height_mm":0.85,"outline":[[0,0],[1,0]],"more":1}""");
        Assert.Equal(new Body("U3", 6.01, 6.00, 0.85, [(0, 0), (1, 0)]), first.Value);
    }

    [Fact]
    public void Null_counts_as_missing() => Assert.Null(Read("""{"spot":"U3","mm":[6,6],"height_mm":null}""").Value.Height);

    [Fact]
    public void Every_fault_of_a_line_is_named_at_once() => Assert.Equal(
        [
            "\"spot\" is missing; it should be a text of 1 to 10000 characters.",
            "\"mm\" should be two numbers [a, b], each a number above 0, but here it is [6,-1].",
            "\"height_mm\" should be a number of 0 or more, but here it is \"tall\".",
            "\"outline[1]\" should be a point [x, y] of two numbers, but here it is [1].",
        ],
        Say(Read("""{"mm":[6,-1],"height_mm":"tall","outline":[[0,0],[1]]}""")));

    [Theory]
    [InlineData("1e999")]
    [InlineData("-1e999")]
    public void A_number_too_large_for_a_double_is_no_number(string huge) =>
        Assert.Equal(
            [$"\"height_mm\" should be a number of 0 or more, but here it is {huge}."],
            Say(Read($$"""{"spot":"U3","mm":[6,6],"height_mm":{{huge}}}""")));

    [Fact]
    public void Half_a_surrogate_pair_is_no_text() =>
        Assert.Equal("spot", Assert.Single(Read("""{"spot":"\ud800","mm":[6,6]}""").Faults).Where);

    [Fact]
    public void A_long_wrong_value_is_shown_shortened()
    {
        var say = Assert.Single(Say(Read($$"""{"spot":"U3","mm":"{{new string('9', 5000)}}"}""")));
        Assert.Equal("\"mm\" should be two numbers [a, b], each a number above 0, but here it is \"" + new string('9', 39) + "….", say);
    }

    [Fact]
    public void Something_that_is_no_object_says_so()
    {
        using var document = JsonDocument.Parse("[1]");
        Assert.Equal(["A line should be an object { … }."], Say(new PayloadReader(document.RootElement).Done(() => "x")));
    }

    private enum Side
    {
        Front,
        Back,
    }

    [Fact]
    public void Words_whole_numbers_flags_times_and_nested_objects_are_read()
    {
        using var document = JsonDocument.Parse(
            """{"side":"back","pins":48,"beep":true,"at":"2026-03-02T10:15:00+01:00","from":{"pin":13},"rows":[{"v":1},{"v":"x"}]}""");
        var read = new PayloadReader(document.RootElement);
        Assert.Equal(Side.Back, read.OneOf("side", ("front", Side.Front), ("back", Side.Back)));
        Assert.Equal(48, read.Whole("pins", 1, 2000));
        Assert.True(read.Flag("beep"));
        Assert.Equal(new DateTimeOffset(2026, 3, 2, 9, 15, 0, TimeSpan.Zero), read.Time("at"));
        Assert.Equal(13, read.Inner("from")!.Whole("pin", 1, 100));
        foreach (var row in read.Inners("rows")) row.Number("v");
        Assert.Equal(["\"rows[1].v\" should be a number, but here it is \"x\"."], Say(read.Done(() => 1)));
    }

    [Theory]
    [InlineData("2026-03-02T10:15:00")]
    [InlineData("yesterday")]
    [InlineData("02.03.2026 10:15")]
    public void A_time_without_its_offset_from_UTC_is_refused(string text)
    {
        using var document = JsonDocument.Parse(JsonSerializer.Serialize(new { at = text }));
        var read = new PayloadReader(document.RootElement);
        read.OptionalTime("at");
        Assert.Equal([$"\"at\" should be a time such as \"2026-03-02T10:15:00Z\", but here it is \"{text}\"."], Say(read.Done(() => 1)));
    }

    [Fact]
    public void An_unknown_word_lists_the_known_ones()
    {
        using var document = JsonDocument.Parse("""{"side":"top"}""");
        var read = new PayloadReader(document.RootElement);
        read.OneOf("side", ("front", Side.Front), ("back", Side.Back));
        Assert.Equal(["\"side\" should be one of front, back, but here it is \"top\"."], Say(read.Done(() => 1)));
    }
}
