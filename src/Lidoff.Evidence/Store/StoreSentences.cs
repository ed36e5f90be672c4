using System.Globalization;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Store;

/// <summary>What a person reads when the store refuses or cannot do something.</summary>
public static class StoreSentences
{
    /// <summary>A dossier name with other letters than short names have.</summary>
    public static Fault DossierName(string name) => new(
        "dossier",
        "1 to 64 of a-z, 0-9, - and _, beginning with a letter or digit",
        $"\"{Short(name)}\" cannot be a dossier's short name: use 1 to 64 of a-z, 0-9, - and _, beginning with a letter or digit.");

    /// <summary>A payload beyond the size that is stored.</summary>
    public static Fault PayloadTooLarge(string kind, long bytes) => new(
        kind, "a line of 16 MiB at most", Say($"A \"{Short(kind)}\" line of {bytes} bytes is more than the 16 MiB a line may have; add it as a file."));

    /// <summary>A target that the dossier does not have.</summary>
    public static Fault NoSuchTarget(string dossier, string id) => new(
        "target", "an entry of this dossier", $"Dossier \"{Short(dossier)}\" has no entry {Short(id)}.");

    /// <summary>Two entries at one place of one chain.</summary>
    public static Fault Fork(Entry entry, EntryId other) => new(
        entry.Id.Hex,
        "one entry at each place of a chain",
        Say($"Chain {Short(entry.Chain)} has two different entries number {entry.Seq}: {Short(other.Hex)} here and {Short(entry.Id.Hex)} coming in. A chain has one writer, so one of the two is not what it claims; nothing was taken in."));

    /// <summary>A payload whose hash is another.</summary>
    public static Fault PayloadLies(EntryId id) => new(id.Hex, "the payload that the entry names by its hash", $"The content of entry {Short(id.Hex)} is not what its hash says; nothing was taken in.");

    /// <summary>A payload that is not there, without anybody having erased it.</summary>
    public static Fault PayloadMissing(EntryId id) => new(id.Hex, "its content, or an erasure that names it", $"The content of entry {Short(id.Hex)} is missing and nobody erased it; nothing was taken in.");

    /// <summary>An entry that leans on one that is neither here nor coming.</summary>
    public static Fault LinkMissing(EntryId id, EntryId link) => new(id.Hex, "every entry that it had seen", $"Entry {Short(id.Hex)} follows entry {Short(link.Hex)}, which is neither here nor coming in; nothing was taken in.");

    /// <summary>An entry whose previous one is not one place before it in its chain.</summary>
    public static Fault ChainBroken(Entry entry) => new(
        entry.Id.Hex, "the entry one place before it in its chain", Say($"Entry {Short(entry.Id.Hex)} says it is number {entry.Seq} of chain {Short(entry.Chain)}, but the entry it follows is not number {entry.Seq - 1} of it; nothing was taken in."));

    /// <summary>A merge that would erase here, where that was not agreed to.</summary>
    public static Fault WouldErase(int count) => new(
        "erase", "a merge that erases nothing here", Say($"What comes in would erase the content of {count} entries here, for good. Nothing was taken in; agree to erasing to go on."));

    /// <summary>The database holds a format of a newer program.</summary>
    public static Fault Newer(string path, long version, long known) => new(
        path,
        Say($"a workspace of format {known} or older"),
        Say($"This workspace was written by a newer Lidoff (format {version}; this one knows up to {known}). Nothing was touched; open it with the newer program."));

    /// <summary>The database file belongs to something else, or is no database.</summary>
    public static Fault NotOurs(string path) => new(path, "a Lidoff workspace", $"{path} is not a Lidoff workspace's database. Nothing was touched.");

    /// <summary>The disk has no room left.</summary>
    public static Fault Full(string path) => new(path, "room on the disk", $"The disk is full: {path} could not grow. Nothing of this step was stored; what was stored before is safe. Make room and try again.");

    /// <summary>Another process has been writing for longer than we wait.</summary>
    public static Fault Busy(string path) => new(path, "a moment without another writer", $"Another program has kept {path} busy for 30 seconds. Nothing of this step was stored; try again.");

    /// <summary>The folder or file may not be written.</summary>
    public static Fault ReadOnly(string path) => new(path, "a workspace that may be written", $"{path} may not be written by this user. Nothing was stored.");

    /// <summary>The database file is damaged.</summary>
    public static Fault Damaged(string path) => new(path, "an undamaged database", $"{path} is damaged. What is here stays as it is; copy the workspace away, then merge it from its last copy or pack.");

    /// <summary>Reading or writing failed in a way that has no sentence of its own.</summary>
    public static Fault Trouble(string path, string reason) => new(path, "a disk that reads and writes", $"{path} could not be read or written ({Short(reason)}). Nothing of this step was stored.");

    /// <summary>A row whose bytes do not fit its id.</summary>
    public static Fault EntryDamaged(string id) => new(id, "the bytes that were stored", $"Entry {Short(id)} has been changed on the disk: its bytes no longer fit its name.");

    /// <summary>A payload whose bytes do not fit the hash in its entry.</summary>
    public static Fault PayloadDamaged(string id) => new(id, "the content that was stored", $"The content of entry {Short(id)} has been changed on the disk: it no longer fits its hash.");

    /// <summary>A file that an entry names and the workspace does not hold.</summary>
    public static Fault FileMissing(string name) => new(name, "the file that was stored", $"The content of \"{Short(name)}\" is not in this workspace.");

    /// <summary>A file beyond the cap.</summary>
    public static Fault FileTooLarge(string name, long cap) => new(
        name, Say($"a file of {cap} bytes at most"), Say($"\"{Short(name)}\" is larger than the {cap} bytes a file may have here; nothing of it was stored."));

    /// <summary>A file whose content is not what its name says.</summary>
    public static string FileChanged => "Its content is not what its hash says: it was changed after it was stored.";

    /// <summary>A file that is there and cannot be read.</summary>
    public static string FileUnreadable => "It is here, but it cannot be read.";

    /// <summary>A file that entries name and that is not there.</summary>
    public static string FileGone => "Entries name this file and it is not here.";

    /// <summary>A file in the vault that does not belong there.</summary>
    public static string FileForeign => "This is no file of the workspace; it was put here by something else.";

    /// <summary>A file that only erased entries name and that lies here all the same.</summary>
    public static string FileLeft => "Every entry that names this file was erased, and the file is still here; opening the workspace removes it.";

    /// <summary>A file that was removed between its storing and its entry's.</summary>
    public static Fault FileVanished(string name) => new(
        name, "the file that was just stored", $"\"{Short(name)}\" was just erased by another program while it was being added; add it once more if it is wanted.");

    /// <summary>A workspace to merge from that lacks a file, or holds another under its name.</summary>
    public static Fault FileNotBrought(string hash) => new(hash, "the file that an entry names", $"File {Short(hash)} is named by what comes in, but it is missing there or not what its hash says; nothing was taken in.");

    /// <summary>An entry of this workspace whose chain or sight has a hole.</summary>
    public static Fault LinkGone(EntryId id, EntryId link) => new(id.Hex, "every entry that it had seen", $"Entry {Short(id.Hex)} follows entry {Short(link.Hex)}, which is not here.");

    /// <summary>An entry of this workspace that is not at the place in its chain that it claims.</summary>
    public static Fault OutOfPlace(Entry entry) => new(
        entry.Id.Hex, "the entry one place before it in its chain", Say($"Entry {Short(entry.Id.Hex)} says it is number {entry.Seq} of chain {Short(entry.Chain)}, but the entry it follows is not number {entry.Seq - 1} of it."));

    /// <summary>Two entries of this workspace at one place of a chain.</summary>
    public static Fault ForkHere(Entry entry, EntryId other) => new(
        entry.Id.Hex, "one entry at each place of a chain", Say($"Chain {Short(entry.Chain)} has two different entries number {entry.Seq}: {Short(other.Hex)} and {Short(entry.Id.Hex)}."));

    /// <summary>A payload that is not there, without anybody having erased it.</summary>
    public static Fault PayloadGone(EntryId id) => new(id.Hex, "its content, or an erasure that names it", $"The content of entry {Short(id.Hex)} is missing and nobody erased it.");

    /// <summary>The newest entry of a chain is named as such and is not here.</summary>
    public static Fault HeadGone(EntryId id) => new(
        id.Hex, "the newest entry of every chain", $"Entry {Short(id.Hex)} is the newest of its chain and it is not here: it was taken out of the journal.");

    /// <summary>The files' folder is a link, so what is written would leave the workspace.</summary>
    public static Fault FilesAreLink(string path) => new(path, "a folder inside the workspace", $"{path} is a link. A workspace's files lie inside it; nothing was touched.");

    /// <summary>A folder without a workspace.</summary>
    public static Fault NoWorkspace(string folder) => new(folder, "a folder that holds a workspace", $"There is no workspace in {folder}.");

    /// <summary>A dossier nobody has begun.</summary>
    public static Fault NoDossier(string name, IReadOnlyList<string> known) => new(
        "dossier",
        "the short name of a dossier in this workspace",
        known.Count == 0
            ? $"There is no dossier \"{Short(name)}\" and none else in this workspace; begin one with `lidoff new {Short(name)}`."
            : $"There is no dossier \"{Short(name)}\" in this workspace; there is {string.Join(", ", known)}.");

    /// <summary>A dossier that is there already.</summary>
    public static Fault DossierExists(string name) => new("dossier", "a short name that is still free", $"There is a dossier \"{Short(name)}\" already; nothing was changed.");

    internal static string Short(string hostile)
    {
        var clean = string.Concat(hostile.Select(c => char.IsControl(c) ? '?' : c));
        return EntryId.Fits(clean) ? clean[..12] : clean.Length <= 40 ? clean : clean[..39] + "…";
    }

    internal static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
