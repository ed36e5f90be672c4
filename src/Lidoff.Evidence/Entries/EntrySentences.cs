using System.Globalization;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Entries;

/// <summary>What a person reads about entries that cannot be read, or lines of <c>note</c> that cannot be taken.</summary>
public static class EntrySentences
{
    /// <summary>A header beyond the size that is read.</summary>
    public static Fault HeaderTooLarge(long bytes) => new(
        "entry", "an entry header of 1 MiB at most", string.Create(CultureInfo.InvariantCulture, $"An entry header has {bytes} bytes; more than 1 MiB is not read."));

    /// <summary>A header that is no JSON.</summary>
    public static Fault BrokenHeader(Fault broken) => new("entry", broken.Expected, $"An entry header cannot be read. {broken.Say}");

    /// <summary>A payload that is no JSON.</summary>
    public static Fault PayloadBroken(EntryId id, Fault broken) => new(id.Hex, broken.Expected, $"The content of entry {id.Hex[..12]} cannot be read. {broken.Say}");

    /// <summary>A payload that is not there though nobody erased it.</summary>
    public static Fault PayloadGone(EntryId id) => new(
        id.Hex, "the content that was stored", $"The content of entry {id.Hex[..12]} is missing though nobody erased it.");

    /// <summary>An input beyond the size that is read.</summary>
    public static Fault InputTooLarge => new("input", "an input of 256 MiB at most", "The input is larger than 256 MiB; more is not read as lines. Add it as a file instead.");

    /// <summary>An input in another encoding.</summary>
    public static Fault NotUtf8 => new("input", "UTF-8", "The input is UTF-16; Lidoff reads UTF-8.");

    /// <summary>A line beyond the size that is stored.</summary>
    public static Fault LineTooLarge(int line) => At((line, 1), "a line of 16 MiB at most", "this line is larger than 16 MiB.");

    /// <summary>Something else than JSON.</summary>
    public static Fault NotJson((int Line, int Byte) place) => At(place, "one JSON object", "this is not JSON.");

    /// <summary>JSON, but no object.</summary>
    public static Fault NoObject(int line) => At((line, 1), "one JSON object", "expected an object { … }.");

    /// <summary>A key that stands twice in one object.</summary>
    public static Fault KeyTwice((int Line, int Byte) place, string key) => At(place, "each key once", $"the key \"{Shown(key)}\" stands here a second time.");

    /// <summary>NaN, an infinity, or a number too large to be one.</summary>
    public static Fault NotFinite((int Line, int Byte) place) => At(place, "a finite number", "this is not a finite number.");

    /// <summary>Text that is no Unicode.</summary>
    public static Fault BrokenText((int Line, int Byte) place) => At(place, "text in UTF-8", "this text is not valid UTF-8.");

    /// <summary>A kind this program does not have.</summary>
    public static Fault UnknownKind(string kind, EvidenceKinds kinds) => new(
        "kind",
        PayloadSentences.OneOf(kinds.All.Select(k => k.Name)),
        $"\"{Shown(kind)}\" is not a kind of line; the kinds are {string.Join(", ", kinds.All.Select(k => k.Name))}.");

    /// <summary>A line that claims a file.</summary>
    public static Fault FilesAreAdded => new("kind", "another kind", "a file comes in with \"lidoff add\", which also stores its content; a line cannot bring one.");

    /// <summary>A key with an underscore in front.</summary>
    public static Fault KeyOfOurs(string key) => new(key, "a key that does not begin with _", $"\"{Shown(key)}\": keys that begin with _ belong to the store.");

    /// <summary>A key that the kind does not have; the line is taken all the same.</summary>
    public static string UnknownKey(int line, string key, string kind) => At((line, null), "", $"the key \"{Shown(key)}\" means nothing to \"{kind}\"; it is kept but counts for nothing.").Say;

    /// <summary>How a supersede names what takes the place.</summary>
    public static string OneReplacement => "either by_line, a line of this input, or by_entry, an entry, and not both";

    /// <summary>A text that can name no entry.</summary>
    public static Fault NoId(string key, string text) => new(key, "an entry's id or its first 8 digits or more", $"\"{key}\" should be an entry's id or its first 8 digits or more, but here it is \"{Shown(text)}\".");

    /// <summary>An id or prefix that fits no entry.</summary>
    public static Fault NoEntry(string key, string text) => new(key, "an entry of this dossier", $"\"{key}\": this dossier has no entry {Shown(text)}.");

    /// <summary>A prefix that fits several entries.</summary>
    public static Fault SeveralEntries(string key, string text) => new(key, "enough digits for one entry", $"\"{key}\": several entries begin with {Shown(text)}; give more digits.");

    /// <summary>A line number without a line.</summary>
    public static Fault NoSuchLine(string key, int line) => new(key, "the number of a line of this input", Invariant($"\"{key}\": line {line} is blank or not there."));

    /// <summary>A line number of a line that cannot take a place.</summary>
    public static Fault LineIsControl(string key, int line) => new(key, "a line with a sighting or decision", Invariant($"\"{key}\": line {line} is no sighting or decision{(key == "by_line" ? ", so it cannot take a place" : "")}."));

    /// <summary>A line number of a line that does not stand above.</summary>
    public static Fault LineNotAbove(string key, int line) => new(key, "the number of a line above", Invariant($"\"{key}\": line {line} does not stand above this one."));

    /// <summary>What a sighting belongs to, said twice.</summary>
    public static string OneTarget => "either target_line, a line of this input, or target, an entry, and not both";

    /// <summary>A line number of a refused line.</summary>
    public static Fault LineRefused(string key, int line) => new(key, "a line that is taken", Invariant($"\"{key}\": line {line} was refused."));

    /// <summary>The same fault with the line in front.</summary>
    internal static Fault OnLine(int line, Fault fault) => At((line, null), fault.Expected, fault.Say) with { Where = Invariant($"line {line}") + (fault.Where.Length > 0 ? ", " + Shown(fault.Where) : "") };

    private static Fault At((int Line, int? Byte) place, string expected, string say)
    {
        var where = place.Byte is { } at ? Invariant($"line {place.Line}, byte {at}") : Invariant($"line {place.Line}");
        return new(where, expected, $"L{where[1..]}: {say}");
    }

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    /// <summary>Hostile text fit to stand in a sentence: on one line and not too long.</summary>
    private static string Shown(string hostile)
    {
        var clean = string.Concat(hostile.Select(c => char.IsControl(c) ? '?' : c));
        return clean.Length <= 64 ? clean : clean[..63] + "…";
    }
}
