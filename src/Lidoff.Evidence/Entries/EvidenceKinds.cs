using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Entries;

/// <summary>The evidence kinds a program knows, by name. Which ones exist is the registry's affair; this only looks them up.</summary>
public sealed class EvidenceKinds
{
    private readonly Dictionary<string, IEvidenceKind> byName = new(StringComparer.Ordinal);

    /// <summary>Takes the kinds; two of one name are a programmer's mistake.</summary>
    public EvidenceKinds(IEnumerable<IEvidenceKind> kinds)
    {
        foreach (var kind in kinds) Guard.That(byName.TryAdd(kind.Name, kind), $"one evidence kind named {kind.Name}");
        All = byName.Values.OrderBy(k => k.Name, StringComparer.Ordinal).ToList();
        Signature = string.Join(' ', All.Select(k => string.Create(CultureInfo.InvariantCulture, $"{k.Name}:{k.Version}")));
    }

    /// <summary>Every kind, by name.</summary>
    public IReadOnlyList<IEvidenceKind> All { get; }

    /// <summary>Names and versions in one line: a fold made with other kinds is another fold.</summary>
    public string Signature { get; }

    /// <summary>Finds a kind by the word that stands in <c>"kind"</c>.</summary>
    public bool TryFind(string name, [MaybeNullWhen(false)] out IEvidenceKind kind) => byName.TryGetValue(name, out kind);
}
