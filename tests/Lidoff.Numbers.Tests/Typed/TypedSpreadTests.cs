using CsCheck;
using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Quantities;
using Lidoff.Numbers.Typed;

namespace Lidoff.Numbers.Tests.Typed;

public sealed class TypedSpreadTests : ReaderTable<TypedSpread>
{
    protected override Outcome<TypedSpread> Read(string? text) => TypedSpread.Read(text, Units.Volt, "here");

    protected override string Write(TypedSpread value) => value.Shape switch
    {
        SpreadShape.Normal => $"{P(value.Centre)}±{P(value.U)}",
        SpreadShape.Uniform => $"{P(value.Least)}..{P(value.Most)}",
        SpreadShape.Triangular => $"{P(value.Least)}..{P(value.Centre)}..{P(value.Most)}",
        _ => P(value.Centre),
    };

    protected override IEnumerable<(string Typed, string Written)> Good =>
    [
        ("3.7", "3.7e0"), ("3.7±0.1", "3.7e0±0.1e0"), ("3.7 +/- 0.1 V", "3.7e0±0.1e0"), ("3.7 +- 0.1", "3.7e0±0.1e0"), ("3,7 ± 0,1", "3.7e0±0.1e0"), ("3.7 V ± 100 mV", "3.7e0±0.1e0"), ("3700 mV ± 100", "3.7e0±0.1e0"),
        ("3.700±0.1", "3.7e0±0.1e0"), ("3,700±0,1", "3.7e0±0.1e0"), ("4 V ± 5 %", "4e0±0.2e0"), ("4 ± 5%", "4e0±0.2e0"),
        ("3.7(1)", "3.7e0±0.1e0"), ("3.70(12) V", "3.7e0±0.12e0"), ("100.021 47(35)", "100.02147e0±0.00035e0"), ("3.7(0.1)", "3.7e0±0.1e0"), ("12(3)", "12e0±3e0"),
        ("3.5..4.2", "3.5e0..4.2e0"), ("3.5..3.7..4.2", "3.5e0..3.7e0..4.2e0"), ("3.5…4.2", "3.5e0..4.2e0"), ("3.5 .. 4.2 V", "3.5e0..4.2e0"), ("500 mV..1 V", "0.5e0..1e0"), ("-1..1", "-1e0..1e0"), ("3..3", "3e0"),
    ];

    protected override IEnumerable<(string? Typed, string Say)> Bad =>
    [
        ("±0.05", "The value before the ± in \"±0.05\" is missing."), ("3±4±5", "\"3±4±5\" has more than one ±."), ("3.7±-0.1", "The uncertainty in \"3.7±-0.1\" is negative."),
        ("4.2..3.5", "The values of the range \"4.2..3.5\" do not rise."), ("1..2..3..4", "\"1..2..3..4\" is not a range: write 3.5..4.2, or 3.5..3.7..4.2 with the most likely value in the middle."),
        ("3..", "\"3..\" is not a range: write 3.5..4.2, or 3.5..3.7..4.2 with the most likely value in the middle."), ("3...4", "\"3...4\" has three dots; a range has two: 3.5..4.2."),
        ("3.5–4.2", "Is \"3.5–4.2\" a range? Then write two dots between its ends: 3.5..4.2?"), ("3.7(a)", "\"a\" does not begin with a number."), ("3.7(1", "The brackets in \"3.7(1\" cannot be read: 3.7(1) means 3.7 with a standard uncertainty of 0.1."),
        ("3,5±0.1", "The points and commas in \"3,5±0.1\" contradict one another."), ("nan±1", "\"nan\" is not a number that can be computed with."), ("1±inf", "\"inf\" is not a number that can be computed with."),
        ("abc..def", "\"abc\" does not begin with a number. | \"def\" does not begin with a number."), ("3 mm ± 1 V", "3 mm ± 1 V is in mm, which is length; here voltage is wanted, for example in V."),
    ];

    [Fact]
    public void A_percentage_of_a_percentage_is_asked_about() => Assert.Equal(
        "Is the uncertainty in \"50±5%\" a part of the value, or is the value in that unit too? Write both units?",
        TypedSpread.Read("50±5%", Units.Percent, "here").Faults[0].Say);

    [Fact]
    public void A_percentage_of_a_temperature_is_refused() => Assert.Equal(
        "A percentage of a temperature (\"25 °C ± 5 %\") has no meaning: give the uncertainty in K or °C.",
        TypedSpread.Read("25 °C ± 5 %", Units.DegreeCelsius, "here").Faults[0].Say);

    [Fact]
    public void Celsius_moves_the_value_but_not_its_uncertainty()
    {
        var spread = TypedSpread.Read("25±2 °C", Units.DegreeCelsius, "here").Value;
        Assert.Equal((298.15, 2.0), (spread.Centre, spread.U));
    }

    [Fact]
    public void What_is_written_for_people_reads_back_and_is_written_the_same()
    {
        var gen = Gen.Select(Gen.Double[-1e4, 1e4], Gen.Double[1e-9, 1e3], Gen.Int[0, 5]);
        gen.Sample(
            (value, u, pick) =>
            {
                Unit[] units = [Units.Volt, Units.Milliampere, Units.Millimetre, Units.Nanosecond, Units.Hour, Units.Ohm];
                var unit = units[pick];
                var shown = QuantityText.WithUncertainty(unit.SpanToSi(value), unit.SpanToSi(u), unit);
                var read = TypedSpread.Read(shown, unit, "here", DecimalMark.Machine).Value;
                Assert.Equal(shown, QuantityText.WithUncertainty(read.Centre, read.U, unit));
            },
            iter: 500);
    }

    private static string P(double value) => R(value).Contains('E', StringComparison.Ordinal) ? R(value) : R(value) + "e0";
}
