using CsCheck;
using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Typed;

namespace Lidoff.Numbers.Tests.Typed;

// The rows are the ambiguities seen in practice (common practice, no source); the digits of other scripts are those of the
// Unicode character database; RKM forms are those quoted from IEC 60062.
public sealed class TypedNumberTests : ReaderTable<TypedNumber>
{
    protected override Outcome<TypedNumber> Read(string? text) => TypedNumber.Read(text, "here");

    // An exponent keeps the written form from being ambiguous: 1.234 would be asked about.
    protected override string Write(TypedNumber value) => value.Digits.Contains('e', StringComparison.Ordinal) ? value.Digits : value.Digits + "e0";

    protected override IEnumerable<(string Typed, string Written)> Good =>
    [
        ("3.7", "3.7e0"), ("3,7", "3.7e0"), ("42", "42e0"), ("  42 ", "42e0"), ("+5", "5e0"), ("-5", "-5e0"),
        ("\u22125", "-5e0"), ("\u20135", "-5e0"), ("\uFF0D5", "-5e0"), ("\u20145", "-5e0"), ("- 5", "-5e0"),
        ("1.000,5", "1000.5e0"), ("1,000.5", "1000.5e0"), ("1 000,5", "1000.5e0"), ("1\u00A0000.5", "1000.5e0"), ("1\u202F000", "1000e0"),
        ("1'000.5", "1000.5e0"), ("1\u2019000", "1000e0"), ("1.000.000", "1000000e0"), ("1,000,000", "1000000e0"), ("12_000", "12000e0"),
        ("0.125", "0.125e0"), ("0,125", "0.125e0"), ("1000.125", "1000.125e0"), ("1.5", "1.5e0"), ("1.2500", "1.2500e0"),
        (".5", "0.5e0"), (",5", "0.5e0"), ("5.", "5e0"), ("100.021 47", "100.02147e0"), ("1.000e3", "1.000e3"),
        ("1e-3", "1e-3"), ("1E+3", "1e3"), ("5×10^-3", "5e-3"), ("5 × 10⁻³", "5e-3"), ("5*10^6", "5e6"), ("5x10^2", "5e2"),
        ("2k2", "2.2e3"), ("4R7", "4.7e0"), ("R47", "0.47e0"), ("0n5", "0.5e-9"), ("4K7", "4.7e3"), ("3V3", "3.3e0"), ("10k0", "10.0e3"), ("4u7", "4.7e-6"), ("4µ7", "4.7e-6"), ("4μ7", "4.7e-6"),
        ("0x4A", "74e0"), ("0X4a", "74e0"), ("-0x10", "-16e0"),
        ("٣٫٧", "3.7e0"), ("٣٧", "37e0"), ("۳٫۷", "3.7e0"), ("३७", "37e0"), ("３７", "37e0"), ("３．７", "3.7e0"), ("1\u200B5", "15e0"),
    ];

    protected override IEnumerable<(string? Typed, string Say)> Bad =>
    [
        (null, "A number is missing."), ("", "A number is missing."), (" \u00A0", "A number is missing."), ("\u200B", "A number is missing."),
        ("1.000", "Is \"1.000\" 1 or 1000?"), ("1,000", "Is \"1,000\" 1 or 1000?"), ("12.345", "Is \"12.345\" 12.345 or 12345?"), ("-1.250", "Is \"1.250\" 1.25 or 1250?"),
        ("4Ah", "Is \"4Ah\" the hexadecimal number 0x4A (74), or a number with the unit Ah?"),
        ("1.000,000.5", "The points and commas in \"1.000,000.5\" contradict one another."),
        ("1,5,3", "The digit groups in \"1,5,3\" are not of three."), ("12,34,567.0", "The digit groups in \"12,34,567.0\" are not of three."),
        ("abc", "\"abc\" does not begin with a number."), ("NaN", "\"NaN\" is not a number that can be computed with."),
        ("-inf", "\"-inf\" is not a number that can be computed with."), ("∞", "\"∞\" is not a number that can be computed with."),
        ("--5", "\"--5\" has more than one sign."), ("5 mA", "\"mA\" behind the number cannot be read."), ("1e999", "\"1e999\" is too large or too small to compute with."),
        ("1e-400", "\"1e-400\" is too large or too small to compute with."), ("1e99999", "\"1e99999\" is too large or too small to compute with."),
        (new string('9', 41), "The number has more than 40 digits."), (new string('1', 201), "201 characters are too many here; at most 200 are read."),
        ("0x", "\"x\" behind the number cannot be read."),
    ];

    [Theory]
    [InlineData("1.000", DecimalMark.Point, 1)]
    [InlineData("1.000", DecimalMark.Comma, 1000)]
    [InlineData("1.000", DecimalMark.Machine, 1)]
    [InlineData("1,000", DecimalMark.Point, 1000)]
    [InlineData("1,000", DecimalMark.Comma, 1)]
    public void An_answer_settles_the_question(string typed, DecimalMark answer, double expected) =>
        Assert.Equal(expected, TypedNumber.Read(typed, "here", answer).Value.Value);

    [Fact]
    public void A_comma_that_could_part_thousands_is_asked_about_on_the_command_line_too() =>
        Assert.Equal("Is \"1,000\" 1 or 1000?", TypedNumber.Read("1,000", "here", DecimalMark.Machine).Faults[0].Say);

    [Fact]
    public void Letters_of_another_alphabet_are_flagged()
    {
        Assert.Equal(["Taken for Latin characters: К (U+041A)."], TypedNumber.Read("4К7", "here").Value.Remarks);
        Assert.Equal(["The digits come from more than one script."], TypedNumber.Read("1٢", "here").Value.Remarks);
        Assert.Equal(["One invisible character was left out."], TypedNumber.Read("1\u200B2", "here").Value.Remarks);
    }

    [Fact]
    public void The_round_trip_form_of_every_double_reads_back_as_the_same_bits() =>
        Gen.Double.Where(double.IsFinite).Sample(
            x => BitConverter.DoubleToInt64Bits(TypedNumber.Read(R(x), "here", DecimalMark.Machine).Value.Value) == BitConverter.DoubleToInt64Bits(x == 0 ? x : x), iter: 3000);
}
