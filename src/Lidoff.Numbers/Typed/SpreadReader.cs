using System.Globalization;
using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Quantities;

namespace Lidoff.Numbers.Typed;

/// <summary>Takes a cleaned line apart into its numbers and units; see <see cref="TypedSpread"/> for the forms.</summary>
internal sealed class SpreadReader(TypedText typed, Unit? expected, string where, DecimalMark mark)
{
    public Outcome<TypedSpread> Read()
    {
        var text = typed.Plain;
        if (TypedSentences.Hedged(where, text) is { } hedged) return hedged;
        if (expected is null && NumberScan.CouldBeHexadecimal(text)) return TypedSentences.HexOrUnit(where, text);
        if (text.Contains("...", StringComparison.Ordinal)) return TypedSentences.ThreeDots(where, text);
        if (text.Contains("..", StringComparison.Ordinal)) return Range(text.Split(".."));
        if (text.Contains('±', StringComparison.Ordinal)) return PlusMinus(text.Split('±'));
        return text.Contains('(', StringComparison.Ordinal) ? Shorthand(text) : Exact(text);
    }

    public Outcome<double> Uncertainty()
    {
        var text = typed.Plain.StartsWith('±') ? typed.Plain[1..] : typed.Plain;
        var terms = Terms([text]);
        if (!terms.TryValue(out var found)) return Outcome<double>.Failed(terms.Faults);
        var (scan, unit) = (found[0].Scan, found[0].Unit ?? expected ?? Units.One);
        return scan.Value < 0 ? TypedSentences.NegativeUncertainty(where, typed.Raw.Trim()) : scan.Number("", []).SpanInSi(unit);
    }

    private Outcome<TypedSpread> Exact(string text) => Terms([text]).Then(found =>
    {
        var unit = found[0].Unit ?? Bare(found[0].Scan);
        var step = (found[0].Scan with { Digits = "1e" + found[0].Scan.LastPlace.ToString(CultureInfo.InvariantCulture) }).Number("", []).SpanInSi(unit);
        return Spread(SpreadShape.Exact, Si(found[0].Scan, unit), 0, null, null, unit, found[0].Unit is not null).Then(spread => spread with { LastDigit = double.IsFinite(step) ? step : 0 });
    });

    private Outcome<TypedSpread> PlusMinus(string[] parts)
    {
        if (parts.Length != 2) return TypedSentences.OnePlusMinus(where, typed.Raw.Trim());
        if (parts[0].Trim().Length == 0) return TypedSentences.NoValueBefore(where, typed.Raw.Trim());
        var terms = Terms(parts, allowRelative: true);
        if (!terms.TryValue(out var found)) return Outcome<TypedSpread>.Failed(terms.Faults);
        var (value, spread) = (found[0], found[1]);
        if (spread.Scan.Value < 0) return TypedSentences.NegativeUncertainty(where, typed.Raw.Trim());
        var relative = spread.Unit is { } ratio && ratio.Dimension == Dimension.None && ratio != Units.One;
        if (relative)
        {
            var own = value.Unit ?? expected;
            if (own is null || (own.Dimension == Dimension.None && value.Unit is null)) return TypedSentences.PercentOfWhat(where, typed.Raw.Trim());
            if (own.Dimension != Dimension.None)
            {
                if (own.Offset != 0) return TypedSentences.PercentOfTemperature(where, typed.Raw.Trim());
                own = value.Unit ?? Bare(value.Scan);
                var centre = Si(value.Scan, own);
                return Spread(SpreadShape.Normal, centre, Math.Abs(centre) * spread.Scan.Number("", []).SpanInSi(spread.Unit!), null, null, own, value.Unit is not null);
            }
        }

        var unit = value.Unit ?? (value.Scan.Letter is null ? spread.Unit : null) ?? Bare(value.Scan);
        var spreadUnit = spread.Unit ?? (spread.Scan.Letter is null ? unit : Bare(spread.Scan));
        return Spread(SpreadShape.Normal, Si(value.Scan, unit), spread.Scan.Number("", []).SpanInSi(spreadUnit), null, null, unit, (value.Unit ?? spread.Unit) is not null);
    }

    /// <summary>3.7(1): the digits in brackets count in the last place (JCGM 100:2008, 7.2.2); 3.7(0.1): they stand as they are.</summary>
    private Outcome<TypedSpread> Shorthand(string text)
    {
        var open = text.IndexOf('(', StringComparison.Ordinal);
        var close = text.IndexOf(')', StringComparison.Ordinal);
        if (close < open + 2 || text.LastIndexOf('(') != open || text.LastIndexOf(')') != close) return TypedSentences.Brackets(where, typed.Raw.Trim());
        var inside = text[(open + 1)..close].Trim();
        var tail = text[(close + 1)..].Trim();
        if (tail.StartsWith('e') || tail.StartsWith('E') || tail.StartsWith('\u00D7')) return TypedSentences.Brackets(where, typed.Raw.Trim());
        var terms = Terms([text[..open] + " " + tail, inside]);
        if (!terms.TryValue(out var found)) return Outcome<TypedSpread>.Failed(terms.Faults);
        if (found[1].Unit is not null || found[1].Scan.Value < 0 || found[0].Scan.Letter is not null) return TypedSentences.Brackets(where, typed.Raw.Trim());
        var digits = inside.All(char.IsAsciiDigit) ? found[1].Scan.Digits + "e" + found[0].Scan.LastPlace.ToString(CultureInfo.InvariantCulture) : found[1].Scan.Digits;
        var unit = found[0].Unit ?? Bare(found[0].Scan);
        var u = (found[1].Scan with { Digits = digits }).Number("", []).SpanInSi(unit);
        return double.IsFinite(u) ? Spread(SpreadShape.Normal, Si(found[0].Scan, unit), u, null, null, unit, found[0].Unit is not null) : TypedSentences.OutOfRange(where, inside);
    }

    private Outcome<TypedSpread> Range(string[] parts)
    {
        if (parts.Length is not (2 or 3) || parts.Any(part => part.Trim().Length == 0)) return TypedSentences.RangeForm(where, typed.Raw.Trim());
        var terms = Terms(parts);
        if (!terms.TryValue(out var found)) return Outcome<TypedSpread>.Failed(terms.Faults);
        var last = found[^1].Unit;
        var units = found.Select(term => term.Unit ?? (term.Scan.Letter is null ? last : null) ?? Bare(term.Scan)).ToList();
        var values = found.Select((term, i) => Si(term.Scan, units[i])).ToList();
        for (var i = 1; i < values.Count; i++)
        {
            if (values[i] < values[i - 1]) return TypedSentences.RangeReversed(where, typed.Raw.Trim());
        }

        var (low, high) = (values[0], values[^1]);
        var typedUnit = found.Any(term => term.Unit is not null);
        if (low == high) return Spread(SpreadShape.Exact, low, 0, null, null, units[^1], typedUnit);
        return parts.Length == 2
            ? Spread(SpreadShape.Uniform, low / 2 + high / 2, 0, low, high, units[^1], typedUnit)
            : Spread(SpreadShape.Triangular, values[1], 0, low, high, units[^1], typedUnit);
    }

    /// <summary>Reads every part as number and unit. All faults at once; one part's certain decimal mark settles the others.</summary>
    private Outcome<IReadOnlyList<(NumberScan Scan, Unit? Unit)>> Terms(string[] parts, bool allowRelative = false)
    {
        var first = parts.Select(part => NumberScan.At(part, where, mark)).ToList();
        var proofs = first.Where(scan => scan.Ok && scan.Value.Settles is not null).Select(scan => scan.Value.Settles!.Value).Distinct().ToList();
        if (proofs.Count > 1) return TypedSentences.MixedMarks(where, typed.Raw.Trim());
        var scans = proofs.Count == 1 && mark is DecimalMark.Ask or DecimalMark.Machine
            ? parts.Select(part => NumberScan.At(part, where, proofs.Count == 1 ? proofs[0] : mark)).ToList()
            : first;
        var faults = new List<Fault>();
        var found = new List<(NumberScan, Unit?)>();
        for (var i = 0; i < parts.Length; i++)
        {
            if (!scans[i].TryValue(out var scan))
            {
                faults.AddRange(scans[i].Faults);
                continue;
            }

            var unit = new UnitBehindNumber(typed.Raw.Trim(), expected, where).Read(parts[i][scan.End..].Trim(), scan.Letter, allowRelative && i > 0);
            if (unit.TryValue(out var read)) found.Add((scan, read));
            else faults.AddRange(unit.Faults);
        }

        return faults.Count == 0 ? found : Outcome<IReadOnlyList<(NumberScan, Unit?)>>.Failed([.. faults.Distinct()]);
    }

    // 2k2 says its own multiplier: in a field of kilohms it is still 2200 ohms.
    private Unit Bare(NumberScan scan) => expected is null ? Units.One : scan.Letter is null ? expected : new Unit(expected.Symbol, expected.Dimension, 1);

    private static double Si(NumberScan scan, Unit unit) => scan.Number("", []).InSi(unit);

    private Outcome<TypedSpread> Spread(SpreadShape shape, double centre, double u, double? least, double? most, Unit unit, bool unitTyped) =>
        double.IsFinite(centre) && double.IsFinite(u) && double.IsFinite((most ?? 0) - (least ?? 0))
            ? new TypedSpread(shape, centre, u, least ?? centre, most ?? centre, unit, unitTyped, typed.Raw, typed.Remarks)
            : TypedSentences.OutOfRange(where, typed.Raw.Trim());
}
