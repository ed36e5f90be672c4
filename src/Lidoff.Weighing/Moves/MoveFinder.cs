using Lidoff.Naming.Ranking;
using Lidoff.Reckoning.Bound;
using Lidoff.Reckoning.Reckon;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring.Shapes;
using Lidoff.Weighing.Modelling;
using Lidoff.Weighing.Questions;

namespace Lidoff.Weighing.Moves;

/// <summary>Follows one question's references to what could be done about each.</summary>
internal sealed class MoveFinder(MoveBench bench, string question)
{
    /// <summary>A part is settled from here on; the report draws the same line.</summary>
    private const double Settled = 0.95;

    /// <summary>A number is wide when its 90 % interval reaches further than this share of it to either side. A convention of ours.</summary>
    private const double WideShare = 0.1;

    private readonly HashSet<string> seen = new(StringComparer.Ordinal);
    private readonly List<NextMove> found = [];

    public IReadOnlyList<NextMove> Found => found;

    /// <summary>A harmless move whose gain is not reckoned.</summary>
    public void Add(string move, double minutes, string why, string about) =>
        found.Add(new(question, move, null, minutes, MoveRisk.None, $"{why} {MoveSentences.NotReckoned}", about));

    /// <summary>Moves about a reference: what settles its quarrels, gives it a value, or makes a wide one narrower.</summary>
    public void Reference(string reference, bool improve = false)
    {
        if (!seen.Add(reference)) return;
        if (Ties.Claim(reference) is { Length: > 0 } name)
        {
            Claim(name);
            return;
        }

        var value = bench.Model.Value(reference);
        foreach (var quarrel in bench.Quarrels.Where(quarrel => quarrel.Members.Intersect(value.RestsOn).Any())) Add(quarrel.Settle, quarrel.Minutes, quarrel.Say, "entry:" + quarrel.Members[0].Hex);
        if (ReckoningStep.Designator(reference) is { Length: > 0 } designator)
        {
            Reckoning(designator, improve);
            return;
        }

        var parts = reference.Split(':', 3);
        var spot = parts.Length > 1 ? parts[1] : "";
        var better = improve || Wide(value);
        switch (parts[0])
        {
            case "part": Part(spot); break;
            case "length" when parts.Length == 3: Length(spot, parts[2], value, better); break;
            case "body" or "pitch" when value.Missing is not null || better: Body(parts, spot, value); break;
            case "angle" or "area" when parts.Length == 3 && (value.Missing is not null || better): Add(MoveSentences.Measure(parts[2], spot, value.Missing is null), MoveMinutes.Scale, Why(value), "spot:" + spot); break;
            case "mass" when value.Missing is not null || better: Add(MoveSentences.Weigh(spot, value.Missing is null), MoveMinutes.Weigh, Why(value), "spot:" + spot); break;
            case "mark" when value.Missing is not null: Add(MoveSentences.ReadMark(spot), MoveMinutes.Look, Why(value), "spot:" + spot); break;
        }
    }

    /// <summary>Moves about the part at a spot.</summary>
    public void Part(string spot)
    {
        var answer = bench.Model.Identity(spot);
        if (!answer.Asked)
        {
            Add(MoveSentences.LookAt(spot), MoveMinutes.Look, WeighingSentences.NothingToName(spot), "spot:" + spot);
            return;
        }

        if (answer.Level == NameLevel.Part && answer.P > Settled) return;
        if (answer.Decisions.Count > 0 && answer.Says != IdentityAnswer.Undecided) return;
        if (answer.Local.Next.Count == 0) Add(MoveSentences.LookAt(spot), MoveMinutes.Look, MoveSentences.NoneTells(answer), "spot:" + spot);
        foreach (var next in answer.Local.Next)
        {
            found.Add(new(question, MoveSentences.Named(spot, next.Measure), next.Bits, next.Minutes, MoveRisks.Of(next.Risk), MoveSentences.Tells(answer, next.Bits), "spot:" + spot));
        }
    }

    private void Claim(string name)
    {
        if (bench.Claim(name) is not { } claim) Add(MoveSentences.Write(name), MoveMinutes.Keyboard, WeighingSentences.NoClaim(name), "claim:" + name);
        else foreach (var reference in claim.References) Reference(reference);
    }

    private void Length(string spot, string what, ModelValue value, bool better)
    {
        if (value.Missing is null)
        {
            if (better) Add(MoveSentences.Measure(what, spot, again: true), MoveMinutes.Calliper, Why(value), "spot:" + spot);
            return;
        }

        var bare = bench.View.Live<LengthSighting>().Where(length => length.Value.Spot == spot && length.Value.What == what)
            .Select(length => length.Value.InPicture).OfType<PictureLength>().Select(clicked => clicked.Picture)
            .Concat(bench.View.Live<ClickedShape>().Where(shape => shape.Value is { Shape: ShapeKind.Circle } && shape.Value.Spot == spot && shape.Value.What == what).Select(shape => shape.Value.Picture))
            .Select(bench.Model.Picture)
            .Where(picture => picture.Found && !bench.Model.Measures(picture.Sha256)).Distinct().ToList();
        foreach (var picture in bare) Add(MoveSentences.SetScale(picture.Name), MoveMinutes.Scale, Why(value), "picture:" + picture.Sha256);
        if (bare.Count == 0) Add(MoveSentences.Measure(what, spot, again: false), MoveMinutes.Calliper, Why(value), "spot:" + spot);
    }

    private void Body(string[] parts, string spot, ModelValue value) =>
        Add(MoveSentences.Measure(parts[0] == "pitch" ? "the pitch" : "the body", spot, value.Missing is null), MoveMinutes.Calliper, Why(value), "spot:" + spot);

    private void Reckoning(string designator, bool improve)
    {
        if (bench.Model.Reckoning(designator) is not { } bound)
        {
            Add(MoveSentences.Bind(designator), MoveMinutes.LookUp, WeighingSentences.NoReckoning(designator), "reckoning:" + designator);
            return;
        }

        if (bound.Result is { } result) Share(designator, bound, result, improve);
        else foreach (var fault in bound.Faults) Without(designator, bound, fault);
    }

    private void Without(string designator, BoundReckoning bound, Numbers.Failing.Fault fault)
    {
        if (bound.Binding.Inputs.FirstOrDefault(input => input.Key == fault.Where) is { From.Length: > 0 } referred && bench.Model.Value(referred.From).Missing is not null)
        {
            Reference(referred.From);
            return;
        }

        Add(MoveSentences.Give(designator, Says(bound, fault.Where)), MoveMinutes.LookUp, fault.Say, "reckoning:" + designator);
    }

    /// <summary>The input that makes most of a wide number's doubt: followed to its sighting, or said.</summary>
    private void Share(string designator, BoundReckoning bound, ReckonResult result, bool improve)
    {
        var value = bench.Model.Value("reckoning:" + designator);
        if (!improve && !Wide(value)) return;
        var largest = result.Value.Shares.OrderByDescending(share => share.Share).FirstOrDefault();
        if (largest is null || largest.Share <= 0) return;
        var why = MoveSentences.Share(designator, largest.Share, ValueText.Interval(value));
        var from = bound.Binding.Inputs.FirstOrDefault(input => input.Key == largest.Input)?.From ?? "";
        var before = found.Count;
        if (from.Length > 0) Reference(from, improve: true);
        if (found.Count > before) return;
        var assumed = result.Inputs.FirstOrDefault(input => input.Input.Key == largest.Input)?.Assumed == true;
        var says = Says(bound, largest.Input);
        Add(assumed ? MoveSentences.Settle(designator, says) : MoveSentences.Improve(designator, says), MoveMinutes.Measure, why, "reckoning:" + designator);
    }

    private static string Says(BoundReckoning bound, string key)
    {
        var info = Reckoner.Find(bound.Binding.Calculation);
        return info.Ok && info.Value.Info.Inputs.FirstOrDefault(input => input.Key == key) is { } input ? $"{key} ({input.Says})" : key;
    }

    private static string Why(ModelValue value) => value.Missing ?? MoveSentences.Wide(value.Says, ValueText.Interval(value));

    private static bool Wide(ModelValue value) => value.Number is { } number && (value.High - value.Low) > 2 * WideShare * Math.Abs(number.Value);
}
