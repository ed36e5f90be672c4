using CsCheck;
using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Typed;

namespace Lidoff.Numbers.Tests.Typed;

// Look-alike rows: common practice of reading small marks, no source; code points from the Unicode character database.
public sealed class TypedMarkTests : ReaderTable<TypedMark>
{
    protected override Outcome<TypedMark> Read(string? text) => TypedMark.Read(text, "here");

    protected override string Write(TypedMark value) => value.Folded;

    protected override IEnumerable<(string Typed, string Written)> Good =>
    [
        ("31?HQ", "31?HQ"), ("n52832", "N52832"), ("  QFAA?0 ", "QFAA?0"), ("A\u00A0 B", "A B"), ("АВС", "ABC"), ("ΟΡΑ", "OPA"), ("ＡＢ１２", "AB12"), ("0٣५", "035"),
        ("10µ", "10µ"), ("10μ", "10µ"), ("4\u2126", "4Ω"), ("x²", "X2"), ("①Ⓐ", "1A"), ("𝐀𝟗𝓏", "A9Z"), ("A−1–2", "A-1-2"), ("A\u200BB", "AB"), ("\u212A1", "K1"), ("ß", "ß"), ("é", "É"),
    ];

    protected override IEnumerable<(string? Typed, string Say)> Bad =>
    [
        (null, "A mark is missing; type ? for a character that cannot be read."), (" ", "A mark is missing; type ? for a character that cannot be read."), ("\u200B", "A mark is missing; type ? for a character that cannot be read."),
        ("A\nB", "A mark is one line; U+000A does not belong in it."), (new string('A', 81), "81 characters are too many here; at most 80 are read."),
    ];

    [Fact]
    public void The_raw_mark_is_kept_and_foreign_letters_are_flagged()
    {
        var mark = TypedMark.Read("А4?", "here").Value;
        Assert.Equal(("А4?", "A4?", 1), (mark.Raw, mark.Folded, mark.Unreadable));
        Assert.Equal(["Taken for Latin characters: А (U+0410)."], mark.Remarks);
    }

    [Theory]
    [InlineData("B05SQ", "80550")]
    [InlineData("ODQ0", "0000")]
    [InlineData("1IL", "111")]
    [InlineData("2Z6GUV", "2266UU")]
    public void Marks_that_look_alike_share_a_key(string mark, string key) => Assert.Equal(key, TypedMark.Read(mark, "here").Value.Key);

    [Theory]
    [InlineData("69W", "M69")]
    [InlineData("A1", null)]
    [InlineData("?8", "8?")]
    public void A_mark_can_be_upside_down(string mark, string? turned) => Assert.Equal(turned, MarkFolding.UpsideDown(mark));

    [Fact]
    public void Folding_twice_changes_nothing() => Gen.String.Sample(text => MarkFolding.Fold(MarkFolding.Fold(text)) == MarkFolding.Fold(text), iter: 2000);

    [Fact]
    public void The_base_library_does_not_fold_full_width_letters_in_this_mode() =>
        // Why MarkFolding has tables of its own; if this fails, they can go.
        Assert.Equal("Ａ", "Ａ".Normalize(System.Text.NormalizationForm.FormKC));
}
