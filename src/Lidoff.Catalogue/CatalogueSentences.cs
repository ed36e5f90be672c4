using System.Globalization;
using Lidoff.Numbers.Failing;

namespace Lidoff.Catalogue;

/// <summary>Every sentence about the catalogue that a person sees.</summary>
public static class CatalogueSentences
{
    /// <summary>Words that stand for a place in a table.</summary>
    public static string Line(int line) => FormattableString.Invariant($"line {line}");

    /// <summary>The line that a fault of a table names, null when it concerns the whole file.</summary>
    public static int? LineOf(Fault fault) =>
        fault.Where.StartsWith("line ", StringComparison.Ordinal) && int.TryParse(fault.Where.AsSpan(5), NumberStyles.None, CultureInfo.InvariantCulture, out var line)
            ? line : null;

    internal static Fault NoManifest(string path) =>
        new(path, "the shipped catalogue", $"The shipped catalogue is missing: {path} is not there. Build the program again, or copy the folder data/catalogue beside it.");

    internal static Fault BadManifest(string path) =>
        new(path, "a catalogue manifest of format 1", $"{path} cannot be read as a catalogue manifest.");

    internal static Fault ChangedTable(string file) =>
        new(file, "the bytes that the manifest names", $"{file} is not the file that the manifest describes: its hash differs. Put the shipped file back.");

    internal static Fault NoPart(int line) =>
        new(Line(line), "a part name", $"Line {line} names no part.");

    internal static Fault LongCell(int line, string column, int most) =>
        new(Line(line), $"at most {most} characters", $"Line {line}: {column} holds more than {most} characters.");

    internal static Fault NotANumber(int line, string column, string text) =>
        new(Line(line), "a number", $"Line {line}: {column} is \"{Short(text)}\", which is not a finite number.");

    internal static Fault AmbiguousNumber(int line, string column, string text) =>
        new(Line(line), "--decimal comma or --decimal point", $"Line {line}: {column} is \"{Short(text)}\": thousands or decimals? Say --decimal comma or --decimal point.");

    internal static Fault OutOfRange(int line, string column, string text, double least, double most, string unit) =>
        new(Line(line), FormattableString.Invariant($"{least} to {most} {unit}").TrimEnd(),
            FormattableString.Invariant($"Line {line}: {column} is \"{Short(text)}\"; expected {least} to {most} {unit}").TrimEnd() + ". Is it in another unit?");

    internal static Fault NotWhole(int line, string column, string text) =>
        new(Line(line), "a whole number", $"Line {line}: {column} is \"{Short(text)}\", which is not a whole number.");

    internal static Fault BadAddress(int line, string text) =>
        new(Line(line), "7-bit addresses 0x00 to 0x7f", $"Line {line}: bus address \"{Short(text)}\" is not a 7-bit address. An 8-bit write address is twice the 7-bit one.");

    internal static Fault BadIdentity(int line, string column, string text) =>
        new(Line(line), "a register or value such as 0x0f", $"Line {line}: {column} is \"{Short(text)}\", which is not a number such as 0x0f.");

    internal static Fault BadPinout(int line, string text) =>
        new(Line(line), "1=VDD:power_in;2=GND:power_in", $"Line {line}: \"{Short(text)}\" in the pin-out is no pin. Write 1=VDD:power_in;2=GND:power_in.");

    internal static Fault BadConfidence(int line, string text) =>
        new(Line(line), "published, derived or memory", $"Line {line}: confidence is \"{Short(text)}\"; expected published, derived or memory.");

    internal static Fault SupplyTurned(int line) =>
        new(Line(line), "supply_min_v not above supply_max_v", $"Line {line}: the lowest supply lies above the highest.");

    internal static Fault BlankMark(int line) =>
        new(Line(line), "at least one character that is not * or ?", $"Line {line}: a mark pattern of nothing but * and ? fits everything.");

    internal static Fault TooManyCells(int line, int cells, int columns) =>
        new(Line(line), $"{columns} cells", $"Line {line} has {cells} cells, the header has {columns}. Is a separator inside a cell that is not quoted?");

    internal static Fault DoubledRow(int line, int first) =>
        new(Line(line), "each row once", $"Line {line} says word for word what line {first} says.");

    internal static Fault DoubledColumn(string column) =>
        new(Line(1), "each column once", $"The column {column} stands twice in the header.");

    internal static Fault NoHeader(string file) =>
        new(file, "a header with the column part", $"{file} has no header line with the column \"part\".");

    internal static Fault NothingInIt(string file) =>
        new(file, "at least one part", $"{file} holds no part.");

    internal static Fault UnclosedQuote(int line) =>
        new(Line(line), "a closing quote", $"The quote opened on line {line} is never closed.");

    internal static Fault TooLarge(string file, long most) =>
        new(file, $"at most {most} bytes", $"{file} is larger than {most / (1024 * 1024)} MB. Split it.");

    internal static Fault TooManyRows(string file, int most) =>
        new(file, $"at most {most} parts", $"{file} holds more than {most} parts. Split it.");

    internal static Fault LongLine(int line, int most) =>
        new(Line(line), $"at most {most} characters a line", $"Line {line} is longer than {most} characters.");

    internal static Fault NotText(string file) =>
        new(file, "UTF-8 text", $"{file} is not UTF-8 text.");

    internal static Fault UnknownKind(string file) =>
        new(file, "csv, jsonl or a symbol library", $"{file} is neither a table with a header, nor lines of JSON, nor a symbol library.");

    internal static Fault BadJson(int line, string why) =>
        new(Line(line), "one JSON object", $"Line {line} is not one JSON object: {why}");

    internal static Fault DoubledKey(int line, string key) =>
        new(Line(line), "each key once", $"Line {line}: the key {Short(key)} stands twice.");

    internal static Fault BadValue(int line, string key) =>
        new(Line(line), "a text or a number", $"Line {line}: {Short(key)} is neither a text nor a number.");

    internal static Fault BadExpression(int line, string why) =>
        new(Line(line), "a symbol library", $"Line {line}: {why}");

    internal static Fault TooDeep(int line, int most) =>
        new(Line(line), $"at most {most} levels", $"Line {line}: the brackets are nested deeper than {most} levels.");

    internal static Fault UnknownParent(int line, string name, string parent) =>
        new(Line(line), "a symbol of the same file", $"Line {line}: {Short(name)} extends {Short(parent)}, which is not in this file.");

    internal static Fault CircularParent(int line, string name) =>
        new(Line(line), "a chain that ends", $"Line {line}: {Short(name)} extends itself through other symbols.");

    internal static Fault MoreFaults(string file, int left) =>
        new(file, "fewer faults", $"{file} has {left} more faults that are not listed.");

    internal static string UnknownColumn(string file, string column) =>
        $"{file}: the column \"{Short(column)}\" is not known here and was left out.";

    internal static string NoPins(string file, string symbol) =>
        $"{file}: the symbol {Short(symbol)} has no pins and was left out.";

    internal static Fault NotKept(string path, string why) =>
        new(path, "a folder that can be written", $"The import could not be kept at {path}: {why} Nothing of it was taken in.");

    /// <summary>What an import did, for people.</summary>
    public static string Imported(string file, int added, int merged) =>
        FormattableString.Invariant($"{file}: {added} parts added, {merged} rows joined to known parts.");

    /// <summary>That a file was refused whole, for people.</summary>
    public static string RefusedWhole(string file, int faults) =>
        FormattableString.Invariant($"{file}: refused whole, nothing of it was taken in ({faults} faults).");

    /// <summary>One found part, for people.</summary>
    public static string Found(string part, string maker, string kind, string package, string confidence) =>
        string.Join(" · ", new[] { part, maker, kind, package, confidence }.Where(w => w.Length > 0));

    /// <summary>How many parts a search found, for people.</summary>
    public static string FoundOf(int shown, int total) => FormattableString.Invariant($"{shown} of {total} parts.");

    /// <summary>What the catalogue holds, for people.</summary>
    public static string Holds(int parts, int codes, int rows) =>
        FormattableString.Invariant($"{parts} parts with {codes} order codes, joined from {rows} rows.");

    /// <summary>That a file could not be read.</summary>
    public static Fault CannotRead(string path, string why) => new(path, "a file that can be read", $"{path} cannot be read: {why}");

    /// <summary>That the decimal mark was answered with neither word.</summary>
    public static string DecimalWord(string text) => $"--decimal is \"{Short(text)}\"; say comma or point.";

    private static string Short(string text) => text.Length <= 60 ? text : string.Concat(text.AsSpan(0, 57), "...");
}
