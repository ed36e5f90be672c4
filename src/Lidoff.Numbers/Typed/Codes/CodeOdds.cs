using Lidoff.Numbers.Failing;

namespace Lidoff.Numbers.Typed.Codes;

/// <summary>
/// Every reading of a code on a passive part with its probability, likeliest first, and that of none of them. A reading weighs as much as its rule
/// is used, its figures are chosen (IEC 60063) and its decade is; shares of rules and letters are judgements of ours, without a source. A text that
/// reads on its head as well is read both ways.
/// </summary>
/// <param name="Readings">The readings; none where no rule fits.</param>
/// <param name="NoneP">Probability that it is no value code, or one by a rule that is not known here.</param>
public sealed record CodeOdds(IReadOnlyList<WeighedCode> Readings, double NoneP)
{
    /// <summary>How often a text that somebody typed stands on its head nevertheless: most people see from the parts around it which way it stands.</summary>
    public const double TypedOnHead = 0.2;

    /// <summary>The same of a text that a machine read, where every character is one on its head too: nothing tells.</summary>
    public const double ReadOnHead = 0.5;

    // How often a short mark on something of unknown sort is no value; of known sort, a maker's own code.
    private const double NoValue = 0.2;
    private const double NoValueOnAPassive = 0.03;

    // Letters and digits of which a mark that is no value is made.
    private const double Characters = 36;

    // Shares of rules among marked parts.
    private static readonly Dictionary<string, double> Rules = new(StringComparer.Ordinal)
    {
        [ResistorDigits.Rule] = 0.45, [ResistorDigits.ZeroRule] = 0.05, [RkmCode.Rule] = 0.15, [Eia96Code.Rule] = 0.08, [E24Code.Rule] = 0.003,
        [CapacitorCode.DigitRule] = 0.08, [CapacitorCode.LetterRule] = 0.02, [RatedCapacitorCode.LetterRule] = 0.04, [RatedCapacitorCode.ShortRule] = 0.01,
        [RatedCapacitorCode.MakerRule] = 0.005, [RatedCapacitorCode.PairRule] = 0.02, [RatedCapacitorCode.VoltsRule] = 0.02,
        [InductorCode.Rule] = 0.08, [InductorCode.NanoRule] = 0.01, [FuseCode.Rule] = 0.01,
    };

    // Of tolerance letters where there is one, and how often there is one.
    private static readonly Dictionary<char, double> Letters = new() { ['K'] = 0.35, ['J'] = 0.3, ['M'] = 0.25, ['F'] = 0.05, ['G'] = 0.02 };
    private const double RareLetter = 0.005;
    private const double WithLetter = 0.3;

    // Of the letters of EIA-96 where two mean the same: B and H, Y and R or S, X and S or R.
    private const double RareTwin = 0.05;

    /// <summary>Weighs a text as somebody typed it; its case counts.</summary>
    /// <param name="text">The text; blanks at the ends are dropped.</param>
    /// <param name="sort">What sort of part it stands on; null where that is not known.</param>
    public static CodeOdds Of(string? text, PassiveSort? sort = null) => Of([(text ?? "", 1)], sort, TypedOnHead, anyCase: false);

    /// <summary>Weighs what a machine read that knows no small letters: each text with how likely it is, together one at most.</summary>
    public static CodeOdds OfRead(IEnumerable<(string Text, double P)> read, PassiveSort? sort = null) => Of([.. Guard.NotNull(read)], sort, ReadOnHead, anyCase: true);

    private static CodeOdds Of(IReadOnlyList<(string Text, double P)> texts, PassiveSort? sort, double onHead, bool anyCase)
    {
        var weights = new List<(WeighedCode Code, double Weight)>();
        var none = 0.0;
        foreach (var (text, p) in texts)
        {
            var given = text.Trim();
            if (given.Length == 0) continue;
            none += p * Elementary.Exp(-given.Count(c => c != ' ') * Elementary.Log(Characters));
            var head = TurnedText.Of(given);
            foreach (var (way, turned) in new[] { (given, false), (head, true) })
            {
                // What reads the same either way is one reading.
                if (way is null || (turned && way == given)) continue;
                var share = p * (head is null || head == given ? 1 : turned ? onHead : 1 - onHead);
                var readings = anyCase ? ComponentCodes.ReadAnyCase(way) : ComponentCodes.Read(way);
                weights.AddRange(readings.Where(reading => sort is null || reading.Sort == sort).Select(reading => (new WeighedCode(reading, way, turned, 0), share * Weight(reading, way))));
            }
        }

        if (weights.Count == 0) return new([], 1);
        none *= sort is null ? NoValue : NoValueOnAPassive;
        // What a machine holds for texts that it did not name is no reading here.
        var said = Math.Min(1, texts.Sum(each => each.P));
        var sum = none + weights.Sum(each => each.Weight);
        // The same value by the same rule out of two texts, of which the likelier one is named.
        var merged = weights.GroupBy(each => (each.Code.Reading.Si, each.Code.Reading.Unit, each.Code.Reading.Rule, each.Code.Reading.RatedVolts, string.Join(',', each.Code.Reading.Tolerances)))
            .Select(group => group.MaxBy(each => each.Weight).Code with { P = said * group.Sum(each => each.Weight) / sum });
        return new([.. merged.OrderByDescending(code => code.P).ThenBy(code => code.Reading.Rule, StringComparer.Ordinal).ThenBy(code => code.Reading.Si)], 1 - (said * (sum - none) / sum));
    }

    private static double Weight(CodeReading reading, string text)
    {
        var weight = Rules[reading.Rule];
        if (reading.Si == 0) return weight;
        var (sort, body) = (reading.Sort, text);
        if (reading.Rule == Eia96Code.Rule && text[2] is 'H' or 'R' or 'S' || reading.Rule == E24Code.Rule && text[0] is 'R' or 'S') weight *= RareTwin;
        if (reading.Tolerances.Count > 0 && reading.Rule is not (Eia96Code.Rule or E24Code.Rule))
        {
            body = text[..^1];
            weight *= WithLetter * Letters.GetValueOrDefault(text.Split(' ')[0][^1], RareLetter);
        }
        else if (reading.Rule == CapacitorCode.DigitRule || reading.Rule == InductorCode.Rule)
        {
            weight *= 1 - WithLetter;
        }

        return weight * FigurePrior.OfFigures(sort, reading.Si, Figures(reading.Rule, body)) * FigurePrior.OfDecade(sort, reading.Si);
    }

    private static int Figures(string rule, string body) => rule switch
    {
        ResistorDigits.Rule => body.Length - 1,
        Eia96Code.Rule => 3,
        // 0R22 shows two figures, 10R two, 47K3 three.
        RkmCode.Rule => Math.Max(2, body.Where(char.IsAsciiDigit).SkipWhile(c => c == '0').Count()),
        _ => 2,
    };
}
