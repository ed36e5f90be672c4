using Lidoff.TestSupport;
using Lidoff.Weighing.Questions;

namespace Lidoff.Weighing.Tests.Questions;

public sealed class QuestionKindTests
{
    [Theory]
    [InlineData("""{"question":"Q1","text":"How long does it run?","ties":["reckoning:R1","part:U3"],"why":"asked most","from":"reader","order":2,"dropped":false,"answer":"a week or so"}""")]
    [InlineData("""{"question":"Q1","text":"Who made it?"}""")]
    public void A_kind_keeps_its_promises(string line) => Assert.Empty(KindLines.Complaints(new QuestionKind(), line));

    [Fact]
    public void A_question_reads_and_references_lose_their_braces() => Assert.Equal(
        new QuestionAsked("Q1", "How long does it run?", ["reckoning:R1", "length:U1:long side"], "", "reader", 2, false, ""),
        KindLines.Read(new QuestionKind(), """{"question":"Q1","text":"How long does it run?","ties":["reckoning:R1","{length:U1:long side}"],"from":"reader","order":2}"""));

    [Fact]
    public void A_question_is_dropped_by_its_name_alone() =>
        Assert.Equal(new QuestionAsked("Q1", "", [], "", "", null, true, ""), KindLines.Read(new QuestionKind(), """{"question":"Q1","dropped":true}"""));

    [Theory]
    [InlineData("""{"question":"Q1"}""", "\"text\" is missing; it should be a text of 1 to 1000 characters.")]
    [InlineData("""{"question":"Q1","text":"?","ties":["part:U1","{part:U1}"]}""", "\"ties\" should be a list in which every reference stands once.")]
    [InlineData("""{"question":"Q1","text":"?","ties":["{ }"]}""", "\"ties\" should be a list of references such as part:U3.")]
    [InlineData("""{"question":"Q1","text":"?","ties":"part:U1"}""", "\"ties\" should be a list of 0 to 20 texts, but here it is \"part:U1\".")]
    public void A_bad_line_gives_its_sentence(string line, string say) => Assert.Equal([say], KindLines.Say(new QuestionKind(), line));
}
