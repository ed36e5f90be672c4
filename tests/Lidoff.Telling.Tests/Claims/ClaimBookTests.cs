using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Grading;
using Lidoff.Telling.Claims;

namespace Lidoff.Telling.Tests.Claims;

/// <summary>
/// The case behind it: an open watch's documented baseline draw went from 163 µA to 60 µA when a sensor was found that never
/// slept (edit history of the watch's public wiki, revision 19485). Every sentence built on it must be flagged, no other.
/// </summary>
public sealed class ClaimBookTests
{
    private static readonly EntryId Trace = new(new string('a', 64));
    private static readonly EntryId Better = new(new string('b', 64));

    [Fact]
    public void A_number_that_leaves_its_published_interval_flags_every_sentence_on_it_and_no_other()
    {
        var written = new[] { Write("C1", "At rest it draws {draw}."), Write("C2", "So it runs {runtime}."), Write("C3", "The board is {width} wide.") };
        var before = ClaimBook.Read(written, [], Resolve(("draw", 163e-6, 5e-6, Trace), ("runtime", 40, 2, Trace), ("width", 26, 0.1, Better)), "1");
        var published = Publish(before);
        var after = ClaimBook.Read(written, [published], Resolve(("draw", 60e-6, 5e-6, Better), ("runtime", 110, 6, Better), ("width", 26, 0.1, Better)), "1");
        Assert.All(before, claim => Assert.Equal(ClaimState.Same, claim.State));
        Assert.Equal([ClaimState.Outside, ClaimState.Outside, ClaimState.Same], after.Select(claim => claim.State));
        Assert.Equal("At rest it draws 6E-05.", after[0].Text);
        Assert.Contains(Better, after[0].RestsOn);
    }

    [Theory]
    [InlineData(164e-6, 5e-6, true, "1", ClaimState.Moved)]
    [InlineData(163e-6, 4e-6, true, "1", ClaimState.Moved)]
    [InlineData(163e-6, 5e-6, true, "2", ClaimState.Same)]
    [InlineData(164e-6, 5e-6, false, "2", ClaimState.ProgramChanged)]
    [InlineData(164e-6, 5e-6, true, "2", ClaimState.Moved)]
    [InlineData(200e-6, 5e-6, false, "2", ClaimState.ProgramChanged)]
    public void The_state_says_whether_the_number_the_support_or_the_program_moved(double value, double u, bool otherSupport, string program, ClaimState expected)
    {
        var written = new[] { Write("C1", "At rest it draws {draw}.") };
        var published = Publish(ClaimBook.Read(written, [], Resolve(("draw", 163e-6, 5e-6, Trace)), "1"));
        var after = ClaimBook.Read(written, [published], Resolve(("draw", value, u, otherSupport ? Better : Trace)), program);
        Assert.Equal(expected, after.Single().State);
    }

    [Fact]
    public void A_name_that_changes_flips_and_a_support_that_goes_is_lost()
    {
        var written = new[] { Write("C1", "U1 is {part:U1}.") };
        var published = Publish(ClaimBook.Read(written, [], _ => Name("A100"), "1"));
        Assert.Equal(ClaimState.Flipped, ClaimBook.Read(written, [published], _ => Name("B200"), "1").Single().State);
        Assert.Equal(ClaimState.Same, ClaimBook.Read(written, [published], _ => Name("A100"), "1").Single().State);
        Assert.Equal(ClaimState.Lost, ClaimBook.Read(written, [published], reference => new ClaimValue(reference, null, null, null, null, "", null, "(lost)", Grade.E0, []), "1").Single().State);
    }

    [Fact]
    public void The_grade_is_the_worst_of_its_values_and_a_why_is_never_above_two()
    {
        ClaimValue Known(string reference) => new(reference, 1, 0.1, 0.8, 1.2, "V", null, "1 V", reference == "good" ? Grade.E4 : Grade.E3, []);
        var claims = ClaimBook.Read([Write("C1", "{good} and {fair}"), Write("C2", "because {good}", why: true), Write("C10", "just words")], [], Known, "1");
        Assert.Equal([("C1", Grade.E3), ("C2", Grade.E2), ("C10", Grade.E1)], claims.Select(claim => (claim.Name, claim.Grade)));
    }

    [Fact]
    public void The_newest_wording_of_a_claim_counts()
    {
        var claims = ClaimBook.Read([Write("C1", "old"), Write("C1", "new")], [], _ => Name("x"), "1");
        Assert.Equal("new", claims.Single().Text);
    }

    private static Sighting<ClaimWritten> Write(string name, string text, bool why = false) => new(Entry("claim"), "", new ClaimWritten(name, text, why));

    private static Sighting<ClaimsPublished> Publish(IReadOnlyList<Claim> claims) =>
        new(Entry("publish"), "", new ClaimsPublished([.. claims.Select(claim => ClaimBook.Baseline(claim, "1"))]));

    private static Entry Entry(string kind) =>
        new(new EntryId(new string('c', 64)), "d", kind, 1, "chain", 1, null, [], [], DateTimeOffset.UnixEpoch, "", new string('0', 64));

    private static ClaimValue Name(string text) => new("part:U1", null, null, null, null, "", text, text, Grade.E3, [Trace]);

    private static Func<string, ClaimValue> Resolve(params (string Reference, double Value, double U, EntryId On)[] known) => reference =>
    {
        var (_, value, u, on) = known.Single(each => each.Reference == reference);
        return new ClaimValue(reference, value, u, value - 1.645 * u, value + 1.645 * u, "", null, value.ToString("R", System.Globalization.CultureInfo.InvariantCulture), Grade.E4, [on]);
    };
}
