using System.Diagnostics.CodeAnalysis;

namespace Lidoff.Numbers.Failing;

/// <summary>A value read from outside, or every fault that was found in it (never empty when there is no value).</summary>
public readonly struct Outcome<T>
{
    private readonly T? value;
    private readonly IReadOnlyList<Fault>? faults;

    private Outcome(T? value, IReadOnlyList<Fault>? faults)
    {
        this.value = value;
        this.faults = faults;
    }

    /// <summary>True when there is a value.</summary>
    public bool Ok => faults is null;

    /// <summary>All faults of the input at once; empty when there is a value.</summary>
    public IReadOnlyList<Fault> Faults => faults ?? [];

    /// <summary>The value. Asking for it when there is none is a programmer's mistake and throws.</summary>
    public T Value => faults is null ? value! : throw new InvalidOperationException("no value: " + faults[0].Say);

    /// <summary>Hands the value out when there is one.</summary>
    public bool TryValue([MaybeNullWhen(false)] out T result)
    {
        result = value;
        return faults is null;
    }

    /// <summary>Turns the value into another, keeping faults as they are.</summary>
    public Outcome<TNext> Then<TNext>(Func<T, TNext> next) => faults is null ? new(next(value!), null) : new(default, faults);

    /// <summary>Goes on with a further step that can fail, keeping faults as they are.</summary>
    public Outcome<TNext> Then<TNext>(Func<T, Outcome<TNext>> next) => faults is null ? next(value!) : new(default, faults);

    /// <summary>A value without a fault.</summary>
    public static implicit operator Outcome<T>(T value) => new(value, null);

    /// <summary>One fault.</summary>
    public static implicit operator Outcome<T>(Fault fault) => new(default, [fault]);

    /// <summary>Every fault of one input, at least one.</summary>
    public static Outcome<T> Failed(IReadOnlyList<Fault> faults)
    {
        Guard.That(faults.Count > 0, "at least one fault");
        return new(default, faults);
    }
}
