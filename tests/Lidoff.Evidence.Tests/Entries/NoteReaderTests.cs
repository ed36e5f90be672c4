using System.Text;
using CsCheck;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Store;
using Lidoff.Evidence.Tests.Folding;
using Lidoff.Numbers.Failing;
using Lidoff.TestSupport;

namespace Lidoff.Evidence.Tests.Entries;

public class NoteReaderTests
{
    private const string Hex = "0123456789abcdef0123456789abcdef0123456789abcdef0123456789abcdef";

    private static Outcome<IReadOnlyList<EntryId>> Find(string prefix)
    {
        EntryId[] known = [new(Hex), new(Hex[..12] + new string('0', 52))];
        return known.Where(id => id.Hex.StartsWith(prefix, StringComparison.Ordinal)).Take(2).ToList();
    }

    private static NoteBatch Read(string text) => Read(Encoding.UTF8.GetBytes(text));

    private static NoteBatch Read(byte[] bytes) => new NoteReader(WordKind.Kinds, Find).Read("tag", JsonLines.Take(new MemoryStream(bytes)).Value);

    private static string[] Say(NoteBatch batch) => batch.Lines.SelectMany(l => l.Faults).Select(f => f.Say).ToArray();

    private static string OnlySay(string text) => Assert.Single(Say(Read(text)));

    private static string Payload(EntryDraft draft) => Encoding.UTF8.GetString(draft.Payload.Span);

    [Fact]
    public void A_good_line_becomes_a_draft_with_its_keys_as_written()
    {
        var batch = Read("""{"kind":"word","text":"µ","specimen":"A","by":"Ada","at":"2026-03-02T10:15:00Z","extra":1.50}""");
        var draft = Assert.Single(batch.Drafts);
        Assert.Equal(("tag", "word", 1, "Ada"), (draft.Dossier, draft.Kind, draft.KindVersion, draft.By));
        Assert.Equal("""{"text":"µ","specimen":"A","at":"2026-03-02T10:15:00Z","extra":1.50}""", Payload(draft));
        Assert.Equal(["Line 1: the key \"extra\" means nothing to \"word\"; it is kept but counts for nothing."], batch.Lines[0].Remarks);
        Assert.Empty(batch.Lines[0].Faults);
    }

    [Fact]
    public void One_bad_line_among_many_keeps_its_place_and_the_rest_is_done()
    {
        var batch = Read("{\"kind\":\"word\",\"text\":\"a\"}\n\nnonsense\r\n{\"kind\":\"word\",\"text\":\"b\"}\r\n");
        Assert.Equal([1, 3, 4], batch.Lines.Select(l => l.Number));
        Assert.Equal([0, null, 1], batch.Lines.Select(l => l.Draft));
        Assert.Equal(["Line 3, byte 2: this is not JSON."], Say(batch));
        Assert.Equal("line 3, byte 2", batch.Lines[1].Faults[0].Where);
    }

    [Theory]
    [InlineData("""{"kind":"word","text":"a","text":"b"}""", "Line 1, byte 27: the key \"text\" stands here a second time.")]
    [InlineData("""{"kind":"word","text":"a","more":{"x":1,"x":2}}""", "Line 1, byte 41: the key \"x\" stands here a second time.")]
    [InlineData("""{"kind":"word","text":NaN}""", "Line 1, byte 23: this is not a finite number.")]
    [InlineData("""{"kind":"word","text":-Infinity}""", "Line 1, byte 23: this is not a finite number.")]
    [InlineData("""{"kind":"word","text":[1,1e999]}""", "Line 1, byte 26: this is not a finite number.")]
    [InlineData("""[1,2]""", "Line 1, byte 1: expected an object { … }.")]
    [InlineData(""""just text"""", "Line 1, byte 1: this is not JSON.")]
    [InlineData("""{"kind":"word","text":"\ud800"}""", "Line 1, byte 23: this text is not valid UTF-8.")]
    [InlineData("""{"kind":"word","text":"a"} {}""", "Line 1, byte 28: this is not JSON.")]
    [InlineData("""{"kind":"word","text":"a",}""", "Line 1, byte 27: this is not JSON.")]
    [InlineData("""{"text":"a"}""", "Line 1: \"kind\" is missing; it should be a text of 1 to 100 characters.")]
    [InlineData("""{"kind":"bird","text":"a"}""", "Line 1: \"bird\" is not a kind of line; the kinds are dossier, erase, file, supersede, undo, word.")]
    [InlineData("""{"kind":"word","text":"a","_salt":"x"}""", "Line 1: \"_salt\": keys that begin with _ belong to the store.")]
    [InlineData("""{"kind":"file","name":"a","sha256":"x","bytes":1}""", "Line 1: a file comes in with \"lidoff add\", which also stores its content; a line cannot bring one.")]
    [InlineData("""{"kind":"undo","target":"0123456"}""", "Line 1: \"target\" should be an entry's id or its first 8 digits or more, but here it is \"0123456\".")]
    [InlineData("""{"kind":"undo","target":"0123456789ab"}""", "Line 1: \"target\": several entries begin with 0123456789ab; give more digits.")]
    [InlineData("""{"kind":"undo","target":"ffffffff"}""", "Line 1: \"target\": this dossier has no entry ffffffff.")]
    [InlineData("""{"kind":"supersede","target":"0123456789abcd","by_line":7}""", "Line 1: \"by_line\": line 7 is blank or not there.")]
    [InlineData("""{"kind":"supersede","target":"0123456789abcd","by_line":1}""", "Line 1: \"by_line\": line 1 is no sighting or decision, so it cannot take a place.")]
    [InlineData("""{"kind":"supersede","target":"0123456789abcd"}""", "Line 1: \"by_line\" should be either by_line, a line of this input, or by_entry, an entry, and not both.")]
    public void What_is_wrong_is_said_with_its_place(string line, string say) => Assert.Equal(say, OnlySay(line));

    [Fact]
    public void Bytes_that_are_no_text_are_refused_with_their_place()
    {
        byte[] bytes = [.. "{\"kind\":\"word\",\"text\":\""u8, 0xC3, 0x28, .. "\"}"u8];
        Assert.Equal(["Line 1, byte 23: this text is not valid UTF-8."], Say(Read(bytes)));
    }

    [Fact]
    public void Every_fault_of_a_line_is_named_at_once() => Assert.Equal(
        [
            "Line 1: \"at\" should be a time such as \"2026-03-02T10:15:00Z\", but here it is \"soon\".",
            "Line 1: \"text\" is missing; it should be a text of 1 to 100 characters.",
        ],
        Say(Read("""{"kind":"word","at":"soon"}""")));

    [Fact]
    public void A_byte_order_mark_is_passed_over_and_UTF_16_refused_whole()
    {
        Assert.Single(Read([0xEF, 0xBB, 0xBF, .. "{\"kind\":\"word\",\"text\":\"a\"}"u8]).Drafts);
        Assert.Equal("The input is UTF-16; Lidoff reads UTF-8.", Assert.Single(JsonLines.Take(new MemoryStream(Encoding.Unicode.GetPreamble())).Faults).Say);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_supersede_names_a_line_before_or_after_it(bool before)
    {
        var word = """{"kind":"word","text":"new"}""";
        var supersede = $$"""{"kind":"supersede","target":"{{Hex.ToUpperInvariant()}}","by_line":{{(before ? 1 : 2)}},"why":"better light"}""";
        var batch = Read(before ? word + "\n" + supersede : supersede + "\n" + word);
        Assert.Empty(Say(batch));
        Assert.Equal(["word", "supersede"], batch.Drafts.Select(d => d.Kind));
        Assert.Equal([DraftTarget.Of(new(Hex)), DraftTarget.OfDraft(0)], batch.Drafts[1].Targets);
        Assert.Equal("""{"why":"better light"}""", Payload(batch.Drafts[1]));
        Assert.Equal(before ? [0, 1] : new int?[] { 1, 0 }, batch.Lines.Select(l => l.Draft));
    }

    [Fact]
    public void A_supersede_falls_with_the_line_that_it_names() => Assert.Equal(
        ["Line 1: \"by_line\": line 2 was refused.", "Line 2: \"text\" is missing; it should be a text of 1 to 100 characters."],
        Say(Read($$"""{"kind":"supersede","target":"{{Hex}}","by_line":2}""" + "\n" + """{"kind":"word"}""")));

    [Fact]
    public void A_sighting_belongs_to_a_line_above_it_or_to_an_entry()
    {
        var batch = ReadTied($$"""
            {"kind":"word","text":"step"}
            {"kind":"tied","text":"mass","target_line":1}
            {"kind":"tied","text":"mass","target":"{{Hex}}"}
            {"kind":"tied","text":"mass"}
            """);
        Assert.Empty(Say(batch));
        Assert.Equal([[], [DraftTarget.OfDraft(0)], [DraftTarget.Of(new(Hex))], []], batch.Drafts.Select(draft => draft.Targets.ToArray()));
        // What it belongs to stands in the entry, not in its payload.
        Assert.All(batch.Drafts.Skip(1), draft => Assert.Equal("""{"text":"mass"}""", Payload(draft)));
    }

    [Theory]
    [InlineData("""{"kind":"tied","text":"a","target_line":1}""", "Line 1: \"target_line\": line 1 does not stand above this one.")]
    [InlineData("""{"kind":"tied","text":"a","target_line":7}""", "Line 1: \"target_line\": line 7 is blank or not there.")]
    [InlineData("""{"kind":"tied","text":"a","target_line":1,"target":"0123456789abcd"}""", "Line 1: \"target_line\" should be either target_line, a line of this input, or target, an entry, and not both.")]
    public void A_sighting_tied_to_nothing_says_so(string line, string says) => Assert.Equal(says, Say(ReadTied(line))[0]);

    private static NoteBatch ReadTied(string text) =>
        new NoteReader(new EvidenceKinds([new WordKind(), new TiedKind(), new SupersedeKind()]), Find).Read("tag", JsonLines.Take(new MemoryStream(Encoding.UTF8.GetBytes(text))).Value);

    private sealed class TiedKind : EvidenceKind<Word>
    {
        public override string Name => "tied";

        public override EntryRole Role => EntryRole.Sighting;

        public override string Room => "See";

        public override string Says => "A word that belongs to another, for tests.";

        public override IReadOnlyList<KindKey> Keys => [new("text", "text", true, "the word"), new("target", "text", false, "the other"), new("target_line", "number", false, "the other")];

        public override Outcome<Word> Read(System.Text.Json.JsonElement payload, int version) => new WordKind().Read(payload, version);
    }

    [Fact]
    public void Lines_go_through_the_store_and_the_fold()
    {
        using var store = new MemoryEntryStore(Seeds.Of("ada"), new SteppingClock());
        var reader = new NoteReader(WordKind.Kinds, prefix => store.Find("tag", prefix));
        var first = store.Append(reader.Read("tag", "{\"kind\":\"word\",\"text\":\"6.1\"}"u8.ToArray()).Drafts).Value[0];
        var second = reader.Read("tag", Encoding.UTF8.GetBytes($$"""
            {"kind":"supersede","target":"{{first.Id.Hex[..8]}}","by_line":2}
            {"kind":"word","text":"6.01"}
            """));
        store.Append(second.Drafts);
        Assert.Equal("6.01", Assert.Single(Histories.FoldOf(Histories.Entries(store)).Live<Word>()).Value.Text);
    }

    /// <summary>Whatever bytes come, each line that is not blank gets an answer and nothing throws.</summary>
    [Fact]
    public void Random_and_mutilated_lines_are_answered()
    {
        var rounds = Environment.GetEnvironmentVariable("LIDOFF_LONG") == "1" ? 200_000 : 3_000;
        var good = Encoding.UTF8.GetBytes($$"""
            {"kind":"word","text":"a\u00b5\n","at":"2026-03-02T10:15:00Z","n":[1.5e3,{"a":null}]}
            {"kind":"supersede","target":"{{Hex}}","by_line":1}
            {"kind":"undo","target":"{{Hex[..14]}}"}
            """);
        var edits = Gen.Select(Gen.Int[0, good.Length - 1], Gen.Byte, Gen.Int[0, 2]).Array[1, 6];
        edits.Sample(
            all =>
            {
                var bytes = good.ToList();
                foreach (var (at, value, how) in all)
                {
                    var place = Math.Min(at, bytes.Count - 1);
                    if (how == 0) bytes[place] = value;
                    else if (how == 1) bytes.Insert(place, value);
                    else bytes.RemoveAt(place);
                }

                var batch = new NoteReader(WordKind.Kinds, Find).Read("tag", bytes.ToArray());
                Assert.All(batch.Lines, line => Assert.True(line.Draft is null == line.Faults.Count > 0));
                Assert.Equal(batch.Drafts.Count, batch.Lines.Count(l => l.Draft is not null));
            },
            iter: rounds);
    }
}
