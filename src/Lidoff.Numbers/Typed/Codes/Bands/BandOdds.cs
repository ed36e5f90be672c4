using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Quantities;

namespace Lidoff.Numbers.Typed.Codes.Bands;

/// <summary>
/// Every reading of colour bands with its probability, likeliest first, and that of none of them: from either end, as resistor or inductor, by the
/// table of IEC 60062, weighed by how often layouts, tolerances, figures (IEC 60063) and decades are. Those shares are judgements of ours.
/// </summary>
/// <param name="Readings">The readings; none where no layout has so many bands or none of its colours fit.</param>
/// <param name="NoneP">Probability that they say none of this.</param>
public sealed record BandOdds(IReadOnlyList<WeighedBands> Readings, double NoneP)
{
    /// <summary>Most bands that a layout has.</summary>
    public const int Most = 6;

    /// <summary>Rule name of the single black band.</summary>
    public const string LinkRule = "one black band, zero-ohm link";

    /// <summary>How much more likely somebody begins to name bands at the first one than at the last. A judgement.</summary>
    public const double BegunAtTheFirst = 4;

    // Colours less likely than that beside the likeliest one of a band are not followed up.
    private const double Negligible = 1e-4;

    // So many colourings are followed up at most.
    private const double MostPaths = 50_000;

    // Readings less likely than that are not listed.
    private const double LeastListed = 1e-4;

    // How often what looks like bands is no such code.
    private const double NoCode = 0.05;

    // Tolerances by how many digits stand before them; the others share what is left. 4 bands are 5 % parts, 5 bands 1 % parts as a rule.
    private static readonly Dictionary<BandColour, double> AfterTwo = new() { [BandColour.Gold] = 0.82, [BandColour.Silver] = 0.08, [BandColour.Red] = 0.04, [BandColour.Brown] = 0.04 };
    private static readonly Dictionary<BandColour, double> AfterThree = new() { [BandColour.Brown] = 0.82, [BandColour.Red] = 0.06, [BandColour.Green] = 0.03, [BandColour.Blue] = 0.02, [BandColour.Violet] = 0.03, [BandColour.Gold] = 0.02 };
    private static readonly Dictionary<BandColour, double> OfInductors = new() { [BandColour.Silver] = 0.55, [BandColour.Gold] = 0.35, [BandColour.Black] = 0.1 };
    private static readonly Dictionary<BandColour, double> Drifts = new() { [BandColour.Brown] = 0.35, [BandColour.Red] = 0.4, [BandColour.Yellow] = 0.1, [BandColour.Orange] = 0.08 };
    private const double Rare = 0.004;

    // Of the two tolerances of grey: parts made since 2016 and those before.
    private const double EachOfTwo = 0.5;

    /// <summary>Weighs bands in the order in which they were named or seen.</summary>
    /// <param name="bands">What each looks like.</param>
    /// <param name="firstToLast">How many times likelier that the code begins at the first than at the last, above zero: 1 where nothing tells.</param>
    /// <param name="sort">What carries them; null where that is not known.</param>
    public static BandOdds Of(IReadOnlyList<BandShares> bands, double firstToLast = 1, PassiveSort? sort = null) => Of([(bands, 1)], firstToLast, sort);

    /// <summary>The same of bands that look different by what is believed of the light: what holds in one light holds for all of them.</summary>
    /// <param name="lights">In each light what each band looks like, as many bands in each, and how likely that light is.</param>
    /// <param name="firstToLast">How many times likelier that the code begins at the first than at the last, above zero.</param>
    /// <param name="sort">What carries them; null where that is not known.</param>
    public static BandOdds Of(IReadOnlyList<(IReadOnlyList<BandShares> Bands, double Weight)> lights, double firstToLast, PassiveSort? sort)
    {
        Guard.That(Guard.NotNull(lights).Count > 0 && lights.All(light => light.Bands.Count == lights[0].Bands.Count && light.Bands.All(band => band.OfColours.Count == BandTable.All.Count)), "a share for each colour of each band in each light");
        Guard.Positive(firstToLast);
        var found = new List<(WeighedBands Bands, double Weight)>();
        var none = NoCode * lights.Sum(light => light.Weight * light.Bands.Aggregate(1.0, (product, band) => product * band.OfColours.Sum() / BandTable.All.Count));
        foreach (var (colours, weight) in Paths(lights))
        {
            if (colours is [BandColour.Black] && sort is null or PassiveSort.Resistor) found.Add((new(new(0, Units.Ohm, LinkRule, []), colours, false, 0), weight));
            foreach (var fromEnd in (bool[])[false, true])
            {
                var share = (fromEnd ? 1 : firstToLast) / (1 + firstToLast);
                BandColour[] read = fromEnd ? [.. colours.Reverse()] : colours;
                foreach (var layout in BandLayout.Of(read.Length).Where(layout => sort is null || layout.Sort == sort))
                {
                    found.AddRange(Read(layout, read, fromEnd).Select(each => (each.Bands, share * layout.Share * weight * each.Weight)));
                }
            }
        }

        var sum = none + found.Sum(each => each.Weight);
        if (found.Count == 0 || sum <= 0) return new([], 1);
        var listed = found.Select(each => each.Bands with { P = each.Weight / sum }).Where(each => each.P >= LeastListed)
            .OrderByDescending(each => each.P).ThenBy(each => each.FromEnd).ThenBy(each => each.Reading.Rule, StringComparer.Ordinal).ThenBy(each => each.Reading.Si).ToList();
        return new(listed, Math.Max(0, 1 - listed.Sum(each => each.P)));
    }

    // Every colour that a band may be, with every one that the others may be, weighed over all lights.
    private static IEnumerable<(BandColour[] Colours, double Weight)> Paths(IReadOnlyList<(IReadOnlyList<BandShares> Bands, double Weight)> lights)
    {
        var bands = lights[0].Bands.Count;
        var likely = Enumerable.Range(0, bands).Select(band => Likely(lights, band)).ToList();
        // Where too much is open, what is least likely of each band is let go.
        for (var most = BandTable.All.Count; likely.Aggregate(1.0, (product, colours) => product * colours.Count) > MostPaths; most--)
        {
            likely = likely.ConvertAll(colours => colours.Take(most).ToList());
        }

        IEnumerable<BandColour[]> paths = [[]];
        foreach (var colours in likely) paths = paths.SelectMany(path => colours.Select(colour => (BandColour[])[.. path, colour]));
        foreach (var path in paths)
        {
            var weight = 0.0;
            foreach (var (seen, share) in lights)
            {
                var product = share;
                for (var i = 0; i < bands; i++) product *= seen[i][path[i]];
                weight += product;
            }

            if (weight > 0) yield return (path, weight);
        }
    }

    // Colours of a band that are not far less likely than the likeliest in some light, the likeliest first.
    private static List<BandColour> Likely(IReadOnlyList<(IReadOnlyList<BandShares> Bands, double Weight)> lights, int band)
    {
        var sums = new double[BandTable.All.Count];
        foreach (var (bands, weight) in lights)
        {
            var all = weight * bands.Where((_, i) => i != band).Aggregate(1.0, (product, other) => product * other.OfColours.Max());
            for (var i = 0; i < sums.Length; i++) sums[i] += all * bands[band].OfColours[i];
        }

        var most = sums.Max();
        return [.. BandTable.All.Where(colour => sums[(int)colour] > Negligible * most).OrderByDescending(colour => sums[(int)colour])];
    }

    private static IEnumerable<(WeighedBands Bands, double Weight)> Read(BandLayout layout, BandColour[] colours, bool fromEnd)
    {
        var figures = 0;
        foreach (var colour in colours.Take(layout.Digits))
        {
            if (BandTable.Digit(colour) is not { } digit) yield break;
            figures = (figures * 10) + digit;
        }

        // A code begins with a digit above 0.
        if (colours[0] == BandColour.Black) yield break;
        var inductor = layout.Sort == PassiveSort.Inductor;
        var si = PowersOfTen.Scale(figures, BandTable.Exponent(colours[layout.Digits]) - (inductor ? 6 : 0));
        var weight = FigurePrior.OfFigures(layout.Sort, si, layout.Digits) * FigurePrior.OfDecade(layout.Sort, si);
        double? drift = layout.Drift ? BandTable.DriftPpm(colours[^1]) : null;
        if (layout.Drift && drift is null) yield break;
        if (layout.Drift) weight *= Drifts.GetValueOrDefault(colours[^1], Rare);
        var shares = inductor ? OfInductors : layout.Digits == 2 ? AfterTwo : AfterThree;
        var behind = layout.Tolerance ? colours[layout.Digits + 1] : (BandColour?)null;
        if (behind is { } metal) weight *= shares.GetValueOrDefault(metal, Rare);
        IReadOnlyList<double> percents = behind is not { } tolerance ? [20] : !inductor ? BandTable.Percents(tolerance) : BandTable.InductorPercent(tolerance) is { } percent ? [percent] : [];
        foreach (var each in percents)
        {
            yield return (new(new(si, inductor ? Units.Henry : Units.Ohm, layout.Rule, [Tolerance.Percent(each)]) { DriftPpm = drift }, colours, fromEnd, 0), weight * (percents.Count > 1 ? EachOfTwo : 1));
        }
    }
}
