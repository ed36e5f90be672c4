using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Recomputing;
using Lidoff.Numbers.Failing;
using Lidoff.Reckoning.Bound;

namespace Lidoff.Weighing.Modelling;

/// <summary>One bound reckoning, its references resolved through the model; null where nobody has noted it.</summary>
public sealed class ReckoningStep(DossierTables tables) : Step<string, BoundReckoning?>
{
    /// <summary>Resolves references; set once by who builds the model, because values and reckonings lean on each other.</summary>
    internal ValueStep? Values { get; set; }

    /// <inheritdoc/>
    public override string Name => "reckoning";

    /// <inheritdoc/>
    public override BoundReckoning? Compute(string key, IReads reads)
    {
        var live = tables.Reckonings.About(key, reads);
        if (live.Count == 0) return null;
        var newest = live[^1];
        if (LeansOn(key, key, [], reads))
        {
            return new(newest.Value, null, [new Fault("inputs", "no reference back to itself", WeighingSentences.Circle(key))], default, [newest.Id]);
        }

        return ReckonBook.Reckon([newest], new Source(Values!, reads))[0];
    }

    private bool LeansOn(string from, string target, HashSet<string> seen, IReads reads)
    {
        var live = tables.Reckonings.About(from, reads);
        if (live.Count == 0) return false;
        foreach (var input in live[^1].Value.Inputs.Select(input => Designator(input.From)).Where(name => name.Length > 0))
        {
            if (input == target || (seen.Add(input) && LeansOn(input, target, seen, reads))) return true;
        }

        return false;
    }

    /// <summary>The reckoning a reference names ("R2" or "reckoning:R2"); empty where it names something else.</summary>
    internal static string Designator(string reference)
    {
        var name = reference.StartsWith("reckoning:", StringComparison.Ordinal) ? reference["reckoning:".Length..] : reference;
        return name.Length > 1 && name[0] == 'R' && name[1..].All(char.IsAsciiDigit) ? name : "";
    }

    private sealed class Source(ValueStep values, IReads reads) : IInputSource
    {
        public Outcome<SourcedInput> Find(string reference, string where)
        {
            var value = reads.Read(values, reference);
            return value.Number is { } number
                ? new SourcedInput(number.Source.Length > 0 ? number : number.From(reference), value.Unit.Dimension, value.Grade, value.RestsOn)
                : new Fault(where, "a reference to a number", value.Missing ?? $"'{reference}' is a name, not a number.");
        }
    }
}
