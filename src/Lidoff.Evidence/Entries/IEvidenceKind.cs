using System.Text.Json;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Entries;

/// <summary>
/// One kind of entry. A room adds a kind by adding one file with a class that derives from <see cref="EvidenceKind{T}"/>;
/// the registry finds it by type.
/// </summary>
public interface IEvidenceKind
{
    /// <summary>The word in <c>"kind"</c>, lower case.</summary>
    string Name { get; }

    /// <summary>Version of the payload's shape, from 1; older versions must stay readable.</summary>
    int Version { get; }

    /// <summary>Who stands behind it.</summary>
    EntryRole Role { get; }

    /// <summary>The room whose work it is, as its name is written (Open, See, Name, Trace, Reckon, Tell) or "all rooms".</summary>
    string Room { get; }

    /// <summary>One sentence of what it records.</summary>
    string Says { get; }

    /// <summary>Its keys in the order they are written, besides those every line has (kind, specimen, instrument, by, at).</summary>
    IReadOnlyList<KindKey> Keys { get; }

    /// <summary>The type its payload becomes, under which the fold lists it.</summary>
    Type PayloadType { get; }

    /// <summary>Reads a payload; all faults at once.</summary>
    Outcome<object> ReadUntyped(JsonElement payload, int version);
}
