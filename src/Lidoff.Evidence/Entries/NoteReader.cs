using System.Buffers;
using System.Text.Json;
using Lidoff.Evidence.Folding;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Entries;

/// <summary>Makes drafts of the lines people and programs hand to <c>note</c>. One bad line does not keep the others out.</summary>
/// <param name="kinds">The kinds a line may have.</param>
/// <param name="find">Entries of the dossier whose id begins with the text given; two are enough where there are more.</param>
public sealed class NoteReader(EvidenceKinds kinds, Func<string, Outcome<IReadOnlyList<EntryId>>> find)
{
    /// <summary>Fewest digits by which an entry may be named.</summary>
    public const int ShortestPrefix = 8;

    /// <summary>Keys every line may have besides those of its kind.</summary>
    public static IReadOnlyList<KindKey> CommonKeys { get; } =
    [
        new("kind", "text", true, "what the line is"),
        new("specimen", "text", false, "the specimen it was seen on"),
        new("instrument", "text", false, "what it was seen or measured with"),
        new("by", "text", false, "who saw, measured or settled it"),
        new("at", "text", false, "when, as in 2026-03-02T10:15:00Z"),
    ];

    /// <summary>Keys that go into the entry itself or are used up here, so that the payload does not repeat them.</summary>
    private static readonly string[] NotInPayload = ["kind", "by"];

    private static readonly string[] NotInTargetingPayload = [.. NotInPayload, "target", TargetLine, "by_line", "by_entry"];

    // What a sighting may say it belongs to, where that is a line of the same input and has no id yet.
    private const string TargetLine = "target_line";

    /// <summary>Reads all lines.</summary>
    /// <param name="dossier">Short name of the dossier they are for.</param>
    /// <param name="input">The input as <see cref="JsonLines.Take"/> hands it over.</param>
    /// <param name="by">Who stands behind lines that name nobody; empty for nobody in particular.</param>
    public NoteBatch Read(string dossier, ReadOnlyMemory<byte> input, string by = "")
    {
        var lines = JsonLines.Split(input).Select(line => ReadLine(dossier, by, line)).ToList();
        var byNumber = lines.ToDictionary(l => l.Number);
        foreach (var line in lines) CheckReplacement(line, byNumber);

        // A supersede may name a line further down; it then waits until all others have their place.
        var good = lines.Where(l => l.Faults.Count == 0).ToList();
        var sorted = good.Where(l => !l.NamesLater).Concat(good.Where(l => l.NamesLater)).ToList();
        for (var i = 0; i < sorted.Count; i++) sorted[i].Place = i;
        var drafts = sorted.Select(l => l.Draft! with { Targets = Targets(l, byNumber) }).ToList();
        return new(drafts, lines.Select(l => new NoteLine(l.Number, l.Kind, l.Faults.Count == 0 ? l.Place : null, l.Faults, l.Remarks)).ToList());
    }

    /// <summary>A line on its way to being a draft.</summary>
    private sealed class Work(int number)
    {
        public int Number { get; } = number;

        public string Kind { get; set; } = "";

        public IEvidenceKind? Known { get; set; }

        public EntryDraft? Draft { get; set; }

        public List<DraftTarget> Targets { get; } = [];

        public int? OtherLine { get; set; }

        public string OtherKey { get; set; } = "";

        public bool NamesLater => OtherLine > Number;

        public int Place { get; set; }

        public List<Fault> Faults { get; } = [];

        public List<string> Remarks { get; } = [];

        public void Fail(Fault fault) => Faults.Add(EntrySentences.OnLine(Number, fault));
    }

    private Work ReadLine(string dossier, string by, JsonLine line)
    {
        var work = new Work(line.Number);
        if (!line.Json.TryValue(out var json))
        {
            work.Faults.AddRange(line.Json.Faults);
            return work;
        }

        var read = new PayloadReader(json);
        work.Kind = read.Text("kind", 100);
        var who = read.OptionalText("by", 200) ?? by;
        read.OptionalText("specimen", 100);
        read.OptionalText("instrument", 200);
        read.OptionalTime("at");
        foreach (var fault in read.Done(() => true).Faults) work.Fail(fault);
        if (work.Kind.Length == 0) return work;

        if (!kinds.TryFind(work.Kind, out var kind)) work.Fail(EntrySentences.UnknownKind(work.Kind, kinds));
        else if (kind is FileKind) work.Fail(EntrySentences.FilesAreAdded);
        else Fill(work, dossier, who, kind, json);
        return work;
    }

    private void Fill(Work work, string dossier, string who, IEvidenceKind kind, JsonElement json)
    {
        work.Known = kind;
        foreach (var fault in kind.ReadUntyped(json, kind.Version).Faults) work.Fail(fault);
        foreach (var property in json.EnumerateObject())
        {
            if (property.Name.StartsWith('_')) work.Fail(EntrySentences.KeyOfOurs(property.Name));
            else if (!kind.Keys.Concat(CommonKeys).Any(k => k.Key == property.Name)) work.Remarks.Add(EntrySentences.UnknownKey(work.Number, property.Name, kind.Name));
        }

        if (kind.Keys.Any(k => k.Key == "target")) ReadTargets(work, kind, json);
        work.Draft = new EntryDraft(dossier, kind.Name, kind.Version, Payload(json, kind.Keys.Any(k => k.Key == "target") ? NotInTargetingPayload : NotInPayload)) { By = who };
    }

    private void ReadTargets(Work work, IEvidenceKind kind, JsonElement json)
    {
        var read = new PayloadReader(json);
        var mustHave = kind.Keys.First(k => k.Key == "target").Required;
        var target = mustHave ? read.Text("target", 64) : read.OptionalText("target", 64) ?? "";
        work.OtherKey = kind is SupersedeKind ? "by_line" : TargetLine;
        var line = kind.Keys.Any(k => k.Key == work.OtherKey) ? read.OptionalWhole(work.OtherKey, 1, int.MaxValue) : null;
        var byEntry = kind is SupersedeKind ? read.OptionalText("by_entry", 64) : null;
        if (kind is SupersedeKind && line is null == byEntry is null) read.Fail("by_line", EntrySentences.OneReplacement);
        if (kind is not SupersedeKind && line is not null && target.Length > 0) read.Fail(TargetLine, EntrySentences.OneTarget);
        foreach (var fault in read.Done(() => true).Faults) work.Fail(fault);

        if (target.Length > 0) Resolve(work, "target", target);
        if (byEntry is not null) Resolve(work, "by_entry", byEntry);
        work.OtherLine = (int?)line;
    }

    private void Resolve(Work work, string key, string text)
    {
        var digits = text.ToLowerInvariant();
        if (digits.Length < ShortestPrefix || !digits.All(char.IsAsciiHexDigitLower))
        {
            work.Fail(EntrySentences.NoId(key, text));
            return;
        }

        var found = find(digits);
        if (!found.Ok)
        {
            foreach (var fault in found.Faults) work.Fail(fault);
        }
        else if (found.Value.Count == 1) work.Targets.Add(DraftTarget.Of(found.Value[0]));
        else work.Fail(found.Value.Count == 0 ? EntrySentences.NoEntry(key, text) : EntrySentences.SeveralEntries(key, text));
    }

    private static void CheckReplacement(Work work, Dictionary<int, Work> byNumber)
    {
        if (work.OtherLine is not { } number) return;
        if (!byNumber.TryGetValue(number, out var named)) work.Fail(EntrySentences.NoSuchLine(work.OtherKey, number));
        else if (named.Known?.Role == EntryRole.Control) work.Fail(EntrySentences.LineIsControl(work.OtherKey, number));
        else if (work.Known is not SupersedeKind && number >= work.Number) work.Fail(EntrySentences.LineNotAbove(work.OtherKey, number));
        else if (named.Faults.Count > 0) work.Fail(EntrySentences.LineRefused(work.OtherKey, number));
    }

    private static List<DraftTarget> Targets(Work work, Dictionary<int, Work> byNumber) =>
        work.OtherLine is { } number ? [.. work.Targets, DraftTarget.OfDraft(byNumber[number].Place)] : work.Targets;

    private static ReadOnlyMemory<byte> Payload(JsonElement json, string[] without)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var writer = new Utf8JsonWriter(buffer, EntryDraft.WriterOptions))
        {
            writer.WriteStartObject();
            foreach (var property in json.EnumerateObject())
            {
                if (!without.Contains(property.Name)) property.WriteTo(writer);
            }

            writer.WriteEndObject();
        }

        return buffer.WrittenMemory;
    }
}
