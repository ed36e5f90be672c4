using System.Globalization;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Grading;
using Lidoff.Evidence.Recomputing;
using Lidoff.Naming.Ranking;
using Lidoff.Numbers.Calculating;
using Lidoff.Numbers.Quantities;
using Lidoff.Numbers.Spreads;
using Lidoff.Reckoning.Reckon;
using Lidoff.Seeing.Measuring.Shapes;
using Lidoff.Seeing.Standards;

namespace Lidoff.Weighing.Modelling;

/// <summary>
/// What a reference stands for: <c>length:SPOT:WHAT</c>, <c>body:SPOT:length</c> (or <c>width</c>, <c>height</c>), <c>pitch:SPOT</c>,
/// <c>angle:SPOT:WHAT</c>, <c>area:SPOT:WHAT</c>, <c>part:SPOT</c>, <c>mark:SPOT</c>, <c>mass:SPOT</c>, <c>state:NAME</c> (its current), <c>reckoning:NAME</c> (or the bare designator). Claims, reckonings and pages all ask here.
/// </summary>
public sealed class ValueStep(DossierTables tables, LengthStep lengths, ShapeStep shapes, IdentityStep identities, ReckoningStep reckonings) : Step<string, ModelValue>
{
    /// <summary>What stands for the whole specimen where a spot would stand: <c>mass:whole</c>.</summary>
    private const string WholeSpecimen = "whole";

    private const double Ninety = 1.6448536269514722;

    /// <inheritdoc/>
    public override string Name => "value";

    /// <inheritdoc/>
    public override bool Same(ModelValue before, ModelValue after) =>
        before.Name == after.Name && before.By == after.By && Nullable.Equals(before.Probability, after.Probability) && before.Grade == after.Grade
        && before.Number?.Value == after.Number?.Value && before.Number?.U == after.Number?.U && before.Low.Equals(after.Low) && before.High.Equals(after.High)
        && before.RestsOn.Equals(after.RestsOn) && before.Because.Equals(after.Because) && before.Missing == after.Missing;

    /// <inheritdoc/>
    public override ModelValue Compute(string key, IReads reads)
    {
        if (ReckoningStep.Designator(key) is { Length: > 0 } designator) return Reckoning(key, designator, reads);
        var parts = key.Split(':', 3);
        return (parts[0], parts.Length) switch
        {
            ("length", 3) => Length(key, parts[1], parts[2], reads),
            ("body", 3) => Body(key, parts[1], parts[2], reads),
            ("pitch", 2) => Pitch(key, parts[1], reads),
            ("angle", 3) => Shape(key, parts[1], ShapeKind.Angle, parts[2], reads),
            ("area", 3) => Shape(key, parts[1], ShapeKind.Area, parts[2], reads),
            ("part", 2) => Part(key, parts[1], reads),
            ("mark", 2) => Mark(key, parts[1], reads),
            ("mass", 2) => Mass(key, parts[1], reads),
            ("state", 2) => State(key, parts[1], reads),
            _ => ModelValue.Lost(key, WeighingSentences.UnknownReference(key)),
        };
    }

    /// <summary>The one way of writing a reference that can be written in two: <c>R1</c> is <c>reckoning:R1</c>.</summary>
    public static string Canonical(string reference) => ReckoningStep.Designator(reference) is { Length: > 0 } name ? "reckoning:" + name : reference;

    private ModelValue Length(string key, string spot, string what, IReads reads)
    {
        var belief = reads.Read(lengths, new LengthKey(spot, what));
        if (belief.Readings.Count == 0)
        {
            var known = tables.Lengths.About(spot, reads).Select(each => each.Value.What).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToList();
            return ModelValue.Lost(key, $"{what} of {spot}", belief.Problems.Count > 0 ? belief.Problems[0] : WeighingSentences.NoLength(spot, what, known));
        }

        var value = CombinedLength.Of(belief.Readings);
        List<string> because = [.. belief.Readings.Select(reading => reading.Says)];
        because.AddRange(belief.Readings.SelectMany(reading => reading.Warnings).Select(warning => warning.Say).Distinct(StringComparer.Ordinal));
        because.AddRange(belief.Problems);
        if (value.Widened > 1.5) because.Add(WeighingSentences.Widened(value.Widened));
        return Millimetres(key, $"{what} of {spot}", value.Mm, value.UMm, value.LowMm, value.HighMm, value.Grade,
            belief.Readings.SelectMany(reading => reading.Scales.Prepend(reading.Sighting)), because);
    }

    private ModelValue Body(string key, string spot, string which, IReads reads)
    {
        var bodies = tables.Bodies.About(spot, reads);
        if (bodies.Count == 0 || which is not ("length" or "width" or "height")) return ModelValue.Lost(key, $"body {which} of {spot}", WeighingSentences.Nothing("body " + which, spot));
        var values = bodies.Select(body => which switch
        {
            "length" => body.Value.LengthMm,
            "width" => body.Value.WidthMm,
            _ => body.Value.HeightMm ?? double.NaN,
        }).Where(double.IsFinite).ToList();
        if (values.Count == 0) return ModelValue.Lost(key, $"body {which} of {spot}", WeighingSentences.Nothing("body " + which, spot));
        var (mm, u) = (values.Average(), bodies.Max(body => body.Value.UMm));
        return Symmetric(key, $"body {which} of {spot}", mm, u, bodies.Select(body => body.Id));
    }

    private ModelValue Pitch(string key, string spot, IReads reads)
    {
        var pitches = tables.Pitches.About(spot, reads);
        var beliefs = tables.Shapes.About(spot, reads).Where(each => each.Value.Shape == ShapeKind.Pitch).Select(each => each.Value.What).Distinct(StringComparer.Ordinal)
            .Select(what => reads.Read(shapes, new ShapeKey(spot, ShapeKind.Pitch, what))).ToList();
        List<ShapeReading> combs = [.. beliefs.SelectMany(belief => belief.Readings)];
        if (combs.Count == 0)
        {
            return pitches.Count == 0
                ? ModelValue.Lost(key, $"pitch of {spot}", beliefs.SelectMany(belief => belief.Problems).FirstOrDefault() ?? WeighingSentences.Nothing("pitch", spot))
                : Symmetric(key, $"pitch of {spot}", pitches.Average(pitch => pitch.Value.Mm), pitches.Max(pitch => pitch.Value.UMm), pitches.Select(pitch => pitch.Id));
        }

        var value = CombinedPitch.Of(pitches, combs);
        List<string> because = [.. combs.Select(comb => comb.AsLength().Says), .. pitches.Select(pitch => QuantityText.Noted(pitch.Value.Mm, pitch.Value.UMm, "mm") + " as noted")];
        because.AddRange(combs.Select(comb => comb.Snap).OfType<StandardSnap>().Select(WeighingSentences.MustBe).Distinct(StringComparer.Ordinal));
        because.AddRange(combs.SelectMany(comb => comb.Warnings).Select(warning => warning.Say).Distinct(StringComparer.Ordinal));
        if (value.Widened > 1.5) because.Add(WeighingSentences.Widened(value.Widened));
        return Millimetres(key, $"pitch of {spot}", value.Mm, value.UMm, value.LowMm, value.HighMm, value.Grade, combs.SelectMany(comb => comb.Scales.Prepend(comb.Sighting)).Concat(pitches.Select(pitch => pitch.Id)), because);
    }

    /// <summary>An angle or an area. What was clicked twice in one picture, or by one board, shares its cameras: the most exact of them stands for all.</summary>
    private ModelValue Shape(string key, string spot, ShapeKind shape, string what, IReads reads)
    {
        var (unit, word, says) = shape == ShapeKind.Area ? (Units.SquareMillimetre, "mm²", $"{what} of {spot}") : (Units.Degree, "°", $"{what} of {spot}");
        var belief = reads.Read(shapes, new ShapeKey(spot, shape, what));
        if (belief.Readings.Count == 0) return ModelValue.Lost(key, says, belief.Problems.Count > 0 ? belief.Problems[0] : WeighingSentences.Nothing(what, spot));
        var lineOf = CombinedLength.LineOf(belief.Readings.Select(reading => reading.AsLength()));
        var lines = belief.Readings.GroupBy(reading => lineOf(reading.AsLength()), StringComparer.Ordinal).OrderBy(line => line.Key, StringComparer.Ordinal)
            .Select(line => line.MinBy(reading => reading.U)!).ToList();
        var mean = WeightedMean.Of([.. lines.Select(line => (line.Value, Math.Max(line.U, 1e-9)))]);
        var widened = Math.Max(1, mean.Birge);
        var (value, u) = (mean.Value, mean.U * widened);
        var (low, high) = lines.Count == 1 ? (lines[0].Low, lines[0].High) : (value - (Ninety * u), value + (Ninety * u));
        List<string> because = [.. belief.Readings.Select(reading => $"{reading.How}: {QuantityText.Noted(reading.Value, reading.U, word)}"), .. belief.Readings.SelectMany(reading => reading.Warnings).Select(warning => warning.Say).Distinct(StringComparer.Ordinal), .. belief.Problems];
        if (widened > 1.5) because.Add(WeighingSentences.Widened(widened));
        return ModelValue.Of(
            key, says, Uncertain.Normal(unit.SpanToSi(value), unit.SpanToSi(u), key), unit.SpanToSi(low), unit.SpanToSi(high), unit, Grades.OfLines([.. lines.Select(_ => Grade.E2)]),
            belief.Readings.SelectMany(reading => reading.Scales.Prepend(reading.Sighting)), because);
    }

    private ModelValue Part(string key, string spot, IReads reads)
    {
        var answer = reads.Read(identities, spot);
        if (!answer.Asked) return ModelValue.Lost(key, $"part at {spot}", WeighingSentences.NothingToName(spot));
        List<string> because = [.. answer.Evidence.Told.Select(told => $"{told.Evidence}: {told.Says}")];
        because.AddRange(tables.Decisions.About(spot, reads).Select(decision => WeighingSentences.Decided(decision.Value)));
        if (answer.Best >= 0)
        {
            // What follows speaks of a part; where the verdict is another, it is said of which.
            if (answer.Local.Candidates[answer.Best].Part.Name != answer.Says) because.Add(WeighingSentences.Nearest(answer.Local.Candidates[answer.Best]));
            because.AddRange(answer.Local.Candidates[answer.Best].Because.Select(each => string.Create(CultureInfo.InvariantCulture, $"{each.Db:+0.0;-0.0} decibans from {each.Evidence}: {each.Say}")));
        }

        because.AddRange(answer.Evidence.Elsewhere.Select(other => WeighingSentences.Elsewhere(spot, answer.Evidence.Specimen, other)));
        because.AddRange(answer.Local.Remarks);
        var restsOn = answer.Evidence.Told.SelectMany(told => told.From).Concat(answer.Decisions).Distinct().Order();
        return new(key, $"part at {spot}", null, double.NaN, double.NaN, Units.One, answer.Says, answer.Says == IdentityAnswer.Undecided ? null : answer.P, answer.Grade, [.. restsOn], [.. because], "", null);
    }

    private ModelValue Mark(string key, string spot, IReads reads)
    {
        var marks = tables.Marks.About(spot, reads);
        // What a machine read stands where no person has, told as such.
        if (marks.Count == 0 && tables.Readings.About(spot, reads).LastOrDefault(each => each.Value.Mark is not null) is { } read)
        {
            return new(key, $"mark on {spot}", null, double.NaN, double.NaN, Units.One, read.Value.Mark!.Written, read.Value.P, Grade.E2, [read.Id], [WeighingSentences.ByMachine(read.Value.P)], "", null) { By = WeighingSentences.ReadByMachine };
        }

        if (marks.Count == 0) return ModelValue.Lost(key, $"mark on {spot}", WeighingSentences.Nothing("mark", spot));
        return new(key, $"mark on {spot}", null, double.NaN, double.NaN, Units.One, marks[^1].Value.Written, null, Grade.E2, [marks[^1].Id], [], "", null);
    }

    private ModelValue Mass(string key, string spot, IReads reads)
    {
        // A mass without a spot is the whole specimen's, and so is the one that stands with the specimen itself.
        var whole = spot == WholeSpecimen;
        var found = tables.Masses.About(whole ? "" : spot, reads).Select(mass => (mass.Id, mass.Value.G, mass.Value.UG)).ToList();
        if (whole && found.Count == 0) found = [.. tables.Specimens.About(DossierTables.Whole, reads).Where(each => each.Value.MassG is not null).Select(each => (each.Id, each.Value.MassG!.Value, each.Value.UG))];
        if (found.Count == 0) return ModelValue.Lost(key, $"mass of {spot}", WeighingSentences.Nothing("mass", spot));
        var (id, g, u) = found[^1];
        var number = Uncertain.Normal(g * 1e-3, u * 1e-3, key);
        return ModelValue.Of(key, $"mass of {spot}", number, (g - (Ninety * u)) * 1e-3, (g + (Ninety * u)) * 1e-3, Units.Gram, Grade.E2, [id], Counted("put on a scale", [.. found.Select(each => QuantityText.Noted(each.G, each.UG, "g"))]));
    }

    private ModelValue State(string key, string name, IReads reads)
    {
        // A current noted without a doubt is taken as it stands, as a typed input without one is.
        var found = tables.States.About(name, reads).Where(state => state.Value.CurrentUa is not null).ToList();
        if (found.Count == 0) return ModelValue.Lost(key, $"current in state {name}", WeighingSentences.Nothing("current", "state " + name));
        var (ua, u) = (found[^1].Value.CurrentUa!.Value, found[^1].Value.UUa ?? 0);
        var number = Uncertain.Normal(ua * 1e-6, u * 1e-6, key);
        return ModelValue.Of(key, $"current in state {name}", number, (ua - (Ninety * u)) * 1e-6, (ua + (Ninety * u)) * 1e-6, Units.Microampere, Grade.E2, [found[^1].Id], Counted("measured before opening", [.. found.Select(each => each.Value.Current)]));
    }

    /// <summary>How it was read; of several readings the newest counts, and the earlier ones are said.</summary>
    private static IEnumerable<string> Counted(string how, IReadOnlyList<string> readings) =>
        readings.Count == 1 ? [how] : [how, WeighingSentences.NewestCounts(readings)];

    private ModelValue Reckoning(string key, string designator, IReads reads)
    {
        var bound = reads.Read(reckonings, designator);
        if (bound is null) return ModelValue.Lost(key, $"reckoning {designator}", WeighingSentences.NoReckoning(designator));
        if (bound.Result is not { } result) return ModelValue.Lost(key, bound.Faults[0].Say);
        List<string> because = [.. result.Inputs.Select(input => input.Assumed
            ? $"{Words(input.Input.Key)}: {QuantityText.Value(input.Value.Value, input.Input.Unit)} (assumed)"
            : $"{Words(input.Input.Key)}: {Given(input)}")];
        if (Shares(result.Value.Shares) is { Length: > 0 } shares) because.Add("Most of the doubt comes from " + shares + ".");
        because.AddRange(result.Cautions.Select(caution => result.Inputs.Aggregate(caution, (said, input) => said.Replace(input.Input.Key, Words(input.Input.Key), StringComparison.Ordinal))));
        var value = result.Value;
        var says = bound.Binding.Says.Length > 0 ? bound.Binding.Says : result.Info.Says;
        return ModelValue.Of(key, says, Uncertain.Normal(value.Value, value.U, key), value.Interval90.Low, value.Interval90.High, result.Info.Unit, bound.Grade, bound.RestsOn, because, result.Info.Source);
    }

    private static string Shares(IReadOnlyList<InputShare> shares) => string.Join(", ", shares.Where(share => share.Share >= 0.05)
        .OrderByDescending(share => share.Share).Take(3).Select(share => string.Create(CultureInfo.InvariantCulture, $"{Words(share.Input)} ({share.Share * 100:0} %)")));

    // Keys are for machines; people read words.
    private static string Words(string key) => key.Replace('_', ' ');

    // A bare number was taken in the input's own unit, which its reader does not know.
    private static string Given(ReckonedInput input) =>
        input.Input.Unit.Symbol != "1" && input.Given.All(c => char.IsAsciiDigit(c) || c is '.' or ',' or '-' or '+' or '±' or ' ' or 'e' or 'E') ? $"{input.Given} {input.Input.Unit.Symbol}" : input.Given;

    private static ModelValue Symmetric(string key, string says, double mm, double u, IEnumerable<EntryId> from) =>
        Millimetres(key, says, mm, u, mm - (Ninety * u), mm + (Ninety * u), Grade.E2, from, [QuantityText.Noted(mm, u, "mm") + " as noted"]);

    private static ModelValue Millimetres(string key, string says, double mm, double u, double low, double high, Grade grade, IEnumerable<EntryId> from, IEnumerable<string> because) =>
        ModelValue.Of(key, says, Uncertain.Normal(mm * 1e-3, u * 1e-3, key), low * 1e-3, high * 1e-3, Units.Millimetre, grade, from, because);
}
