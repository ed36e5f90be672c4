using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Entries;

/// <summary>An entry before the store has given it a place in a chain.</summary>
/// <param name="Dossier">Short name of the dossier.</param>
/// <param name="Kind">Name of the evidence kind.</param>
/// <param name="KindVersion">Version of the payload's shape.</param>
/// <param name="Payload">A JSON object in UTF-8 without white space around it and without keys that begin with an underscore.</param>
public sealed record EntryDraft(string Dossier, string Kind, int KindVersion, ReadOnlyMemory<byte> Payload)
{
    /// <summary>Strings are written as they are, not as escapes: the journal is to be read by people too.</summary>
    internal static readonly JsonWriterOptions WriterOptions = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>What it speaks about, in order. Default: nothing.</summary>
    public IReadOnlyList<DraftTarget> Targets { get; init; } = [];

    /// <summary>Who writes it. Default: nobody in particular.</summary>
    public string By { get; init; } = "";

    /// <summary>SHA-256 of stored files it brings with it. Default: none.</summary>
    public IReadOnlyList<string> Files { get; init; } = [];

    /// <summary>A draft whose payload's keys <paramref name="write"/> writes; the object's braces stand around it already.</summary>
    public static EntryDraft Of(string dossier, IEvidenceKind kind, Action<Utf8JsonWriter>? write = null)
    {
        Guard.NotNull(kind);
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, WriterOptions))
        {
            json.WriteStartObject();
            write?.Invoke(json);
            json.WriteEndObject();
        }

        return new(dossier, kind.Name, kind.Version, buffer.WrittenMemory);
    }
}
