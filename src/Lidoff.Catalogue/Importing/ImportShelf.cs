using System.Globalization;
using System.Security.Cryptography;
using Lidoff.Numbers.Failing;

namespace Lidoff.Catalogue.Importing;

/// <summary>
/// The imports of one workspace as plain files in a folder, in the order in which they came:
/// <c>0001-auto-3f2a…-mine.csv</c> (number, decimal mark as answered, start of the SHA-256, name). A file is written under
/// another name, synced and renamed, so that no half import is ever seen.
/// </summary>
public sealed class ImportShelf(string folder)
{
    private const int HashDigits = 32;
    private const int LongestName = 100;

    /// <summary>The shelf of a workspace.</summary>
    public static ImportShelf Of(string workspaceFolder) => new(Path.Combine(workspaceFolder, "catalogue"));

    /// <summary>All imports, in order.</summary>
    public IReadOnlyList<ImportSource> Sources() => Directory.Exists(folder)
        ? [.. Directory.EnumerateFiles(folder).Order(StringComparer.Ordinal).Select(Source).OfType<ImportSource>()]
        : [];

    /// <summary>
    /// Reads a file and, where it is without a fault, keeps it. The counts are against the parts known before. What is on
    /// the shelf already is not kept twice.
    /// </summary>
    public ImportResult Add(byte[] bytes, string fileName, PartCatalogue known, ImportOptions options, out IReadOnlyList<string> notes)
    {
        var read = ImportReader.Read(new MemoryStream(bytes), fileName, options);
        notes = read.TryValue(out var rows) ? rows.Notes : [];
        var result = ImportResult.Of(known, read);
        if (result.Refused.Count > 0) return result;
        var there = Sources();
        var hash = Convert.ToHexStringLower(SHA256.HashData(bytes))[..HashDigits];
        if (there.Any(s => s.Hash == hash)) return result;
        var kept = Keep(bytes, string.Join('-', (there.Count + 1).ToString("0000", CultureInfo.InvariantCulture), Word(options.DecimalComma), hash, Safe(fileName)));
        return kept is { } fault ? new ImportResult(0, 0, [fault]) : result;
    }

    private Fault? Keep(byte[] bytes, string name)
    {
        var path = Path.Combine(folder, name);
        var temporary = Path.Combine(folder, "." + Path.GetRandomFileName());
        try
        {
            Directory.CreateDirectory(folder);
            using (var file = new FileStream(temporary, FileMode.CreateNew, FileAccess.Write))
            {
                file.Write(bytes);
                file.Flush(flushToDisk: true);
            }

            File.Move(temporary, path);
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Where there is no folder there is nothing to take away.
            if (File.Exists(temporary)) File.Delete(temporary);
            return CatalogueSentences.NotKept(path, e.Message);
        }
    }

    private static ImportSource? Source(string path)
    {
        var pieces = Path.GetFileName(path).Split('-', 4);
        if (pieces.Length < 4 || pieces[2].Length != HashDigits) return null;
        bool? comma = pieces[1] switch { "comma" => true, "point" => false, _ => null };
        return new ImportSource(pieces[3], pieces[2], () => File.OpenRead(path), new ImportOptions(comma));
    }

    private static string Word(bool? comma) => comma switch { true => "comma", false => "point", null => "auto" };

    private static string Safe(string fileName)
    {
        var name = string.Concat(Path.GetFileName(fileName).Select(c => char.IsAsciiLetterOrDigit(c) || c is '.' or '_' or '-' ? c : '_'));
        return name.Length == 0 ? "import" : name.Length <= LongestName ? name : name[^LongestName..];
    }
}
