using System.CommandLine;
using System.Text.Json;
using Lidoff.Catalogue;
using Lidoff.Catalogue.Importing;
using Lidoff.Catalogue.Parts;
using Lidoff.Numbers.Failing;
using Lidoff.Talking;

namespace Lidoff.Commands;

/// <summary><c>lidoff catalogue stats|search|import</c>: what Lidoff knows of parts, and a user's own parts beside it.</summary>
public sealed class CatalogueCommand : ILidoffCommand
{
    private readonly Option<bool> json = new("--json") { Description = "JSON on standard output." };

    /// <inheritdoc/>
    public string Says => "What Lidoff knows of parts: counts, search, and bringing in parts of your own.";

    /// <inheritdoc/>
    public string Example => "catalogue search N52832 --json";

    /// <inheritdoc/>
    public void Build(Command command, Seat seat)
    {
        command.Subcommands.Add(Stats(seat));
        command.Subcommands.Add(Search(seat));
        command.Subcommands.Add(Import(seat));
    }

    private Command Stats(Seat seat)
    {
        var command = Sub("stats", "Counts by class, maker and confidence, and which columns are filled.", seat);
        command.SetAction(parsed => With(seat, parsed, catalogue =>
        {
            var stats = catalogue.Stats;
            if (parsed.GetValue(json)) seat.Talk.Json(writer => Write(writer, stats));
            else
            {
                seat.Talk.Line(CatalogueSentences.Holds(stats.Parts, stats.OrderCodes, stats.Rows));
                foreach (var (kind, count) in stats.ByKind) seat.Talk.Line(FormattableString.Invariant($"{count,7} {kind}"));
            }

            return ExitCodes.Done;
        }));
        return command;
    }

    private Command Search(Seat seat)
    {
        var command = Sub("search", "Parts by name, order code, mark, maker or class; ? is one unreadable sign, * any number.", seat);
        var text = new Argument<string>("TEXT") { Description = "What to look for." };
        var limit = new Option<int>("--limit") { Description = "Most rows to show (default 50).", DefaultValueFactory = _ => 50 };
        command.Arguments.Add(text);
        command.Options.Add(limit);
        command.SetAction(parsed => With(seat, parsed, catalogue =>
        {
            var found = catalogue.Search(parsed.GetValue(text)!, Math.Max(0, parsed.GetValue(limit)));
            if (parsed.GetValue(json))
            {
                seat.Talk.Json(writer =>
                {
                    writer.WriteString("query", found.Query);
                    writer.WriteStartArray("rows");
                    foreach (var row in found.Rows) Write(writer, row.Part);
                    writer.WriteEndArray();
                    writer.WriteNumber("total", found.Total);
                });
                return ExitCodes.Done;
            }

            foreach (var row in found.Rows) seat.Talk.Line(CatalogueSentences.Found(row.Part.Name, row.Part.Maker, row.Part.Class, PackageOf(row.Part), Word(row.Part)));
            seat.Talk.Say(CatalogueSentences.FoundOf(found.Rows.Count, found.Total));
            return ExitCodes.Done;
        }));
        return command;
    }

    private Command Import(Seat seat)
    {
        var command = Sub("import", "Brings in parts from csv, jsonl or symbol libraries, each file whole or not at all.", seat);
        var files = new Argument<string[]>("FILE") { Description = "Files; - reads standard input.", Arity = ArgumentArity.OneOrMore };
        var mark = new Option<string?>("--decimal") { Description = "The decimal mark of the files: comma or point (default: seen from the file)." };
        command.Arguments.Add(files);
        command.Options.Add(mark);
        command.SetAction(parsed =>
        {
            var word = parsed.GetValue(mark);
            if (word is not (null or "comma" or "point"))
            {
                seat.Talk.Say(CatalogueSentences.DecimalWord(word));
                return ExitCodes.Usage;
            }

            var options = new ImportOptions(word is null ? null : word == "comma");
            var refused = 0;
            var all = parsed.GetValue(files)!;
            foreach (var file in all)
            {
                // Each file is counted against what is known with the files before it.
                var code = With(seat, parsed, catalogue => ImportOne(file, options, catalogue, seat, parsed));
                if (code == ExitCodes.Refused) refused++;
            }

            return refused == 0 ? ExitCodes.Done : refused == all.Length ? ExitCodes.Refused : ExitCodes.Look;
        });
        return command;
    }

    private int ImportOne(string file, ImportOptions options, PartCatalogue catalogue, Seat seat, ParseResult parsed)
    {
        var bytes = Bytes(file, seat);
        IReadOnlyList<string> notes = [];
        var result = bytes.Ok
            ? ImportShelf.Of(seat.WorkspaceFolder(parsed)).Add(bytes.Value, Path.GetFileName(file), catalogue, options, out notes)
            : new ImportResult(0, 0, bytes.Faults);
        foreach (var note in notes) seat.Talk.Say(note);
        if (result.Refused.Count > 0)
        {
            seat.Talk.SayFaults(result.Refused);
            seat.Talk.Say(CatalogueSentences.RefusedWhole(file, result.Refused.Count));
        }
        else
        {
            seat.Talk.Say(CatalogueSentences.Imported(file, result.Added, result.Merged));
        }

        if (parsed.GetValue(json)) seat.Talk.Json(writer => Write(writer, result));
        return result.Refused.Count > 0 ? ExitCodes.Refused : ExitCodes.Done;
    }

    private Command Sub(string name, string says, Seat seat)
    {
        var command = new Command(name, says);
        command.Options.Add(json);
        command.Options.Add(seat.WorkspaceOption);
        return command;
    }

    private static int With(Seat seat, ParseResult parsed, Func<PartCatalogue, int> use)
    {
        var workspace = seat.WorkspaceFolder(parsed);
        var data = Path.Combine(seat.ProgramFolder, "data", "catalogue");
        var opened = PartCatalogue.Open(data, Path.Combine(workspace, "cache"), ImportShelf.Of(workspace).Sources());
        if (!opened.TryValue(out var catalogue))
        {
            seat.Talk.SayFaults(opened.Faults);
            return ExitCodes.Refused;
        }

        using (catalogue) return use(catalogue);
    }

    private static Outcome<byte[]> Bytes(string file, Seat seat)
    {
        try
        {
            // One byte over the limit is enough for the reader to refuse the file by its size.
            using var input = file == "-" ? seat.Talk.Input : File.OpenRead(seat.PathOf(file));
            using var copy = new MemoryStream();
            var piece = new byte[81_920];
            while (copy.Length <= ImportLimits.Bytes && input.Read(piece, 0, piece.Length) is var count and > 0) copy.Write(piece, 0, count);
            return copy.ToArray();
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return CatalogueSentences.CannotRead(file, failure.Message);
        }
    }

    private static void Write(Utf8JsonWriter writer, CatalogueStats stats)
    {
        writer.WriteNumber("parts", stats.Parts);
        writer.WriteNumber("order_codes", stats.OrderCodes);
        writer.WriteNumber("rows", stats.Rows);
        Write(writer, "kind", stats.ByKind);
        Write(writer, "class", stats.ByClass);
        Write(writer, "maker", stats.ByMaker);
        Write(writer, "confidence", stats.ByConfidence);
        Write(writer, "filled", stats.Filled);
    }

    private static void Write(Utf8JsonWriter writer, string name, IReadOnlyList<KeyValuePair<string, int>> counts)
    {
        writer.WriteStartObject(name);
        foreach (var (word, count) in counts) writer.WriteNumber(word, count);
        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, Part part)
    {
        writer.WriteStartObject();
        writer.WriteString("part", part.Name);
        writer.WriteString("maker", part.Maker);
        writer.WriteString("class", part.Class);
        writer.WriteString("package", PackageOf(part));
        writer.WriteString("confidence", Word(part));
        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, ImportResult result)
    {
        writer.WriteNumber("added", result.Added);
        writer.WriteNumber("merged", result.Merged);
        writer.WriteStartArray("refused");
        foreach (var fault in result.Refused)
        {
            writer.WriteStartObject();
            // A fault of the whole file has no line.
            if (CatalogueSentences.LineOf(fault) is { } line) writer.WriteNumber("line", line);
            else writer.WriteNull("line");
            writer.WriteString("say", fault.Say);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
    }

    private static string PackageOf(Part part) => part.Packages.Select(p => p.Name).FirstOrDefault(n => n.Length > 0) ?? "";

    private static string Word(Part part) => part.Confidence.ToString().ToLowerInvariant();
}
