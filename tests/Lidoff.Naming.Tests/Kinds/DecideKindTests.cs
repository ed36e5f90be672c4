using System.Text.Json;
using Lidoff.Naming.Kinds;

namespace Lidoff.Naming.Tests.Kinds;

public class DecideKindTests
{
    private static Lidoff.Numbers.Failing.Outcome<IdentityDecision> Read(string json) => new DecideKind().Read(JsonDocument.Parse(json).RootElement, 1);

    // The line that docs/contracts.md shows.
    [Fact]
    public void The_line_of_the_contract_is_an_acceptance() =>
        Assert.Equal(new IdentityDecision("U3", Verdict.Accept, "nRF52832", "…"), Read("""{"kind":"decide","spot":"U3","accept":"nRF52832","why":"…"}""").Value);

    [Fact]
    public void A_part_can_be_rejected_or_be_in_no_list()
    {
        Assert.Equal(Verdict.Reject, Read("""{"spot":"U3","reject":"nRF52832","why":"body"}""").Value.Verdict);
        Assert.Equal(Verdict.NotListed, Read("""{"spot":"U3","not_listed":true,"why":"house number"}""").Value.Verdict);
    }

    [Theory]
    [InlineData("""{"spot":"U3","why":"x"}""")]
    [InlineData("""{"spot":"U3","accept":"a","reject":"b","why":"x"}""")]
    [InlineData("""{"spot":"U3","accept":"a","accept_family":"TPS62","why":"x"}""")]
    public void Exactly_one_verdict_is_wanted(string line) => Assert.Contains(KindSentences.OneVerdict, Read(line).Faults);

    [Fact]
    public void A_family_can_be_accepted_where_the_member_is_open()
    {
        Assert.Equal(new IdentityDecision("U3", Verdict.Family, "TPS6274x", "…"), Read("""{"kind":"decide","spot":"U3","accept_family":"TPS6274x","why":"…"}""").Value);
        Assert.Equal([KindSentences.FamilyTooShort], Read("""{"spot":"U3","accept_family":"x-","why":"…"}""").Faults);
    }

    [Fact]
    public void A_decision_without_a_reason_is_refused() => Assert.False(Read("""{"spot":"U3","accept":"a"}""").Ok);
}
