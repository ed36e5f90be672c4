using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Grading;
using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Spreads;
using Lidoff.Reckoning.Reckon;

namespace Lidoff.Reckoning.Bound;

/// <summary>
/// Reckons all bound reckonings of a dossier; one may rest on another (<c>{"from": "R2"}</c>), none on itself. A pure function
/// of the bindings, the source and the seed.
/// </summary>
public sealed class ReckonBook
{
    private readonly Dictionary<string, Sighting<ReckonBinding>> bindings = new(StringComparer.Ordinal);
    private readonly Dictionary<string, BoundReckoning> done = new(StringComparer.Ordinal);
    private readonly HashSet<string> open = new(StringComparer.Ordinal);
    private readonly InputReader reader = new(new NoColumns());
    private readonly IInputSource source;
    private readonly ulong seed;

    private ReckonBook(IReadOnlyList<Sighting<ReckonBinding>> live, IInputSource source, ulong seed)
    {
        foreach (var binding in live) bindings[binding.Value.Reckoning] = binding;
        this.source = source;
        this.seed = seed;
    }

    /// <summary>Every reckoning in the order of its designator's number; of several under one designator the last in fold order counts.</summary>
    public static IReadOnlyList<BoundReckoning> Reckon(IReadOnlyList<Sighting<ReckonBinding>> live, IInputSource source, ulong seed = 1)
    {
        var book = new ReckonBook(Guard.NotNull(live), Guard.NotNull(source), seed);
        return [.. book.bindings.Keys.OrderBy(name => name.Length).ThenBy(name => name, StringComparer.Ordinal).Select(book.Reckon)];
    }

    private BoundReckoning Reckon(string designator)
    {
        if (done.TryGetValue(designator, out var ready)) return ready;
        open.Add(designator);
        var binding = bindings[designator];
        var grades = new List<Grade>();
        var restsOn = new SortedSet<EntryId> { binding.Id };
        var outcome = Reckoner.Find(binding.Value.Calculation).Then(calculation =>
            Inputs(binding.Value, calculation.Info, grades, restsOn).Then(inputs => Reckoner.Run(calculation, inputs, seed)));
        open.Remove(designator);
        var bound = outcome.TryValue(out var result)
            ? new BoundReckoning(binding.Value, result, [], ReckonGrade.Of(grades, result.Info.Maturity), restsOn.ToValueList())
            : new BoundReckoning(binding.Value, null, outcome.Faults.ToValueList(), Grade.E0, restsOn.ToValueList());
        return done[designator] = bound;
    }

    private Outcome<IReadOnlyList<ReckonedInput>> Inputs(ReckonBinding binding, CalculationInfo info, List<Grade> grades, SortedSet<EntryId> restsOn)
    {
        var faults = new List<Fault>();
        foreach (var unknown in binding.Inputs.Where(bound => info.Inputs.All(input => input.Key != bound.Key)))
            faults.Add(ReckoningSentences.UnknownKey(unknown.Key, info));

        var inputs = new List<ReckonedInput>();
        foreach (var input in info.Inputs)
        {
            var bound = binding.Inputs.FirstOrDefault(each => each.Key == input.Key);
            var read = bound switch
            {
                null when input.Default is { } assumed => Uncertain.Exact(assumed),
                null => ReckoningSentences.Missing(input),
                { From.Length: > 0 } => Referred(input, bound.From, grades, restsOn),
                _ => reader.Read(input, bound.Typed),
            };
            if (bound is not { From.Length: > 0 }) grades.Add(ReckonGrade.OfTyped);
            if (read.TryValue(out var value)) inputs.Add(new(input, value, bound is null ? "" : bound.From.Length > 0 ? bound.From : bound.Typed));
            else faults.AddRange(read.Faults);
        }

        return faults.Count == 0 ? inputs : Outcome<IReadOnlyList<ReckonedInput>>.Failed(faults);
    }

    private Outcome<Uncertain> Referred(CalculationInput input, string from, List<Grade> grades, SortedSet<EntryId> restsOn)
    {
        var found = bindings.ContainsKey(from) ? OtherReckoning(input, from) : source.Find(from, input.Key);
        return found.Then(sourced =>
        {
            if (sourced.Dimension != input.Unit.Dimension) return ReckoningSentences.OtherDimension(input, from, sourced.Dimension);
            grades.Add(sourced.Grade);
            restsOn.UnionWith(sourced.RestsOn);
            // Two inputs under one reference are one thing: they rise and fall together.
            var value = sourced.Value.Source.Length > 0 ? sourced.Value : sourced.Value.From(from);
            return InputReader.InRange(input, value, value.Value, value.Value);
        });
    }

    private Outcome<SourcedInput> OtherReckoning(CalculationInput input, string from)
    {
        if (open.Contains(from)) return ReckoningSentences.Circle(input.Key, from);
        var other = Reckon(from);
        if (other.Result is not { } result) return ReckoningSentences.NothingThere(input.Key, from);
        // Its value and Monte Carlo spread go on as a normal; the shape of its draws does not.
        return new SourcedInput(Uncertain.Normal(result.Value.Value, result.Value.U), result.Info.Unit.Dimension, other.Grade, other.RestsOn);
    }
}
