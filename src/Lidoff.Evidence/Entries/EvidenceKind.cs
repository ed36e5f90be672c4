using System.Text.Json;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Entries;

/// <summary>An evidence kind whose payload becomes a <typeparamref name="T"/>: an immutable record with value equality.</summary>
public abstract class EvidenceKind<T> : IEvidenceKind
    where T : class
{
    /// <inheritdoc/>
    public abstract string Name { get; }

    /// <inheritdoc/>
    public virtual int Version => 1;

    /// <inheritdoc/>
    public abstract EntryRole Role { get; }

    /// <inheritdoc/>
    public abstract string Room { get; }

    /// <inheritdoc/>
    public abstract string Says { get; }

    /// <inheritdoc/>
    public abstract IReadOnlyList<KindKey> Keys { get; }

    /// <summary>Reads a payload of <paramref name="version"/>; all faults at once. Unknown keys are left alone here.</summary>
    public abstract Outcome<T> Read(JsonElement payload, int version);

    Type IEvidenceKind.PayloadType => typeof(T);

    Outcome<object> IEvidenceKind.ReadUntyped(JsonElement payload, int version) => Read(payload, version).Then(value => (object)value);
}
