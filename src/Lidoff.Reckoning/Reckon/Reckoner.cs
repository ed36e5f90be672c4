using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Spreads;

namespace Lidoff.Reckoning.Reckon;

/// <summary>Reckons one number from what somebody typed.</summary>
public sealed class Reckoner(IColumnSource columns)
{
    private const double NotableShare = 0.001;

    private readonly InputReader reader = new(columns);

    /// <summary>The number, or every fault of the request at once, each placed at its key.</summary>
    public Outcome<ReckonResult> Reckon(ReckonRequest request)
    {
        Guard.NotNull(request);
        return Find(request.Name).Then(calculation => Inputs(calculation.Info, request.Inputs).Then(inputs => Run(calculation, inputs, request.Seed)));
    }

    /// <summary>The calculation of a name, or a fault that offers the nearest ones.</summary>
    public static Outcome<Calculation> Find(string name) =>
        Calculations.Find(name) is { } found ? found : ReckoningSentences.UnknownCalculation(name, Calculations.Nearest(name));

    /// <summary>Runs a calculation on inputs that are in range.</summary>
    public static Outcome<ReckonResult> Run(Calculation calculation, IReadOnlyList<ReckonedInput> inputs, ulong seed)
    {
        Guard.NotNull(calculation);
        var info = calculation.Info;
        var value = calculation.Run([.. inputs.Select(input => input.Value)], seed);
        if (!double.IsFinite(value.Value) || !double.IsFinite(value.U)) return ReckoningSentences.NoValue(info.Name);
        return new ReckonResult(info, value, [.. inputs], [.. info.Cautions, .. Remarks(info, value, inputs)]);
    }

    private Outcome<IReadOnlyList<ReckonedInput>> Inputs(CalculationInfo info, IReadOnlyList<TypedInput> typed)
    {
        var faults = new List<Fault>();
        var known = info.Inputs.Select(input => input.Key).ToHashSet(StringComparer.Ordinal);
        foreach (var key in typed.Select(input => input.Key).Distinct().Where(key => !known.Contains(key)))
            faults.Add(ReckoningSentences.UnknownKey(key, info));

        var inputs = new List<ReckonedInput>();
        foreach (var input in info.Inputs)
        {
            var given = typed.Where(each => each.Key == input.Key).ToList();
            if (given.Count > 1) faults.Add(ReckoningSentences.KeyTwice(input));
            else if (given.Count == 0 && input.Default is { } assumed) inputs.Add(new(input, Uncertain.Exact(assumed), ""));
            else if (given.Count == 0) faults.Add(ReckoningSentences.Missing(input));
            else if (reader.Read(input, given[0].Text) is var read && read.TryValue(out var value)) inputs.Add(new(input, value, given[0].Text.Trim()));
            else faults.AddRange(read.Faults);
        }

        return faults.Count == 0 ? inputs : Outcome<IReadOnlyList<ReckonedInput>>.Failed(faults);
    }

    private static IEnumerable<string> Remarks(CalculationInfo info, CalculationValue value, IReadOnlyList<ReckonedInput> inputs)
    {
        var assumed = inputs.Where(input => input.Assumed).ToList();
        if (assumed.Count > 0) yield return ReckoningSentences.Assumed(assumed);
        if (value.Skipped > NotableShare * value.Samples) yield return ReckoningSentences.DrawsLeftOut((double)value.Skipped / value.Samples);
        if (value.Parted && value.U > 0) yield return ReckoningSentences.Parted;
        if (info.Maturity == Maturity.Experimental) yield return ReckoningSentences.Experimental;
    }
}
