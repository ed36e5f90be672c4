using System.Text.Json;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Entries;

/// <summary>The kind <c>file</c>.</summary>
public sealed class FileKind : EvidenceKind<FileAdded>
{
    /// <summary>The word in <c>"kind"</c>.</summary>
    public const string Word = "file";

    /// <summary>Longest name that is kept, in UTF-16 units; the rest of a longer one is cut off.</summary>
    public const int LongestName = 1000;

    /// <inheritdoc/>
    public override string Name => Word;

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Sighting;

    /// <inheritdoc/>
    public override string Room => "all rooms";

    /// <inheritdoc/>
    public override string Says => "A file was put into the workspace.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys =>
    [
        new("name", "text", true, "its name where it came from"),
        new("sha256", "text", true, "hash of its content, 64 hex digits"),
        new("bytes", "number", true, "its length in bytes"),
        new("type", "text", false, "what its content was recognised as"),
        new("from", "text", false, "how it came"),
    ];

    /// <inheritdoc/>
    public override Outcome<FileAdded> Read(JsonElement payload, int version)
    {
        var read = new PayloadReader(payload);
        var name = read.Text("name", LongestName);
        var hash = read.Text("sha256", 64);
        var bytes = read.Whole("bytes", 0, long.MaxValue);
        var type = read.OptionalText("type", 200) ?? "";
        var from = read.OptionalText("from", 200) ?? "";
        if (hash.Length > 0 && !EntryId.Fits(hash)) read.Fail("sha256", "64 hex digits, lower case");
        return read.Done(() => new FileAdded(name, hash, bytes, type, from));
    }

    /// <summary>The draft that records a stored file. A name too long is cut, a blank one becomes <c>unnamed</c>.</summary>
    public static EntryDraft Draft(string dossier, FileAdded file, string by = "")
    {
        Guard.NotNull(file);
        return EntryDraft.Of(dossier, new FileKind(), json =>
        {
            json.WriteString("name", Fitting(file.Name));
            json.WriteString("sha256", file.Sha256);
            json.WriteNumber("bytes", file.Bytes);
            if (file.Type.Length > 0) json.WriteString("type", file.Type);
            if (file.From.Length > 0) json.WriteString("from", file.From);
        }) with { Files = [file.Sha256], By = by };
    }

    private static string Fitting(string name)
    {
        // A lone half of a surrogate pair, possible in a file name, cannot be written as UTF-8.
        var clean = string.Concat(name.EnumerateRunes());
        if (string.IsNullOrWhiteSpace(clean)) return "unnamed";
        if (clean.Length <= LongestName) return clean;
        return clean[..(char.IsHighSurrogate(clean[LongestName - 1]) ? LongestName - 1 : LongestName)];
    }
}
