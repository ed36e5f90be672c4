using System.CommandLine;
using Lidoff.Catalogue;
using Lidoff.Catalogue.Importing;
using Lidoff.Evidence.Entries;
using Lidoff.Naming.Asking;
using Lidoff.Naming.Knowing;
using Lidoff.Naming.Ranking;
using Lidoff.Numbers.Failing;
using Lidoff.Talking;

namespace Lidoff.Commands;

/// <summary><c>lidoff name EVIDENCE.jsonl [--top N] --json</c>: ranks candidates for each line of evidence.</summary>
public sealed class NameCommand : ILidoffCommand
{
    private readonly Argument<string> file = new("EVIDENCE") { Description = "One line of evidence a spot, as docs/contracts.md lays it down; - reads standard input." };
    private readonly Option<int> top = new("--top") { Description = "Candidates to write out (default 10).", DefaultValueFactory = _ => 10 };
    private readonly Option<bool> json = new("--json") { Description = "One JSON object a line on standard output." };

    /// <inheritdoc/>
    public string Says => "Which part is it, and how sure: ranks candidates for each line of evidence, with 'none of these' among them.";

    /// <inheritdoc/>
    public string Example => "name evidence.jsonl --top 5 --json";

    /// <inheritdoc/>
    public void Build(Command command, Seat seat)
    {
        command.Arguments.Add(file);
        command.Options.Add(top);
        command.Options.Add(json);
        command.SetAction((parsed, stop) => Task.FromResult(Run(parsed, seat, stop)));
    }

    private int Run(ParseResult parsed, Seat seat, CancellationToken stop)
    {
        if (parsed.GetValue(top) < 1)
        {
            seat.Talk.Say(NameCommandSentences.Top);
            return ExitCodes.Usage;
        }

        var read = InputFiles.Lines(seat, parsed.GetValue(file)!);
        if (!read.TryValue(out var input)) return Refused(seat, read.Faults);
        var workspace = seat.WorkspaceFolder(parsed);
        var opened = PartCatalogue.Open(Path.Combine(seat.ProgramFolder, "data", "catalogue"), Path.Combine(workspace, "cache"), ImportShelf.Of(workspace).Sources());
        if (!opened.TryValue(out var catalogue)) return Refused(seat, opened.Faults);
        using (catalogue) return Rank(JsonLines.Split(input), new Ranker(new NamingCatalogue(catalogue.Parts)), parsed, seat, stop);
    }

    private int Rank(IReadOnlyList<JsonLine> lines, Ranker ranker, ParseResult parsed, Seat seat, CancellationToken stop)
    {
        int done = 0, refused = 0;
        foreach (var each in lines)
        {
            stop.ThrowIfCancellationRequested();
            var item = EvidenceReader.Read(each);
            if (!item.Line.TryValue(out var line))
            {
                refused++;
                if (parsed.GetValue(json)) seat.Talk.JsonFault(item.Id, item.Line.Faults);
                else seat.Talk.SayFaults(item.Line.Faults);
                continue;
            }

            done++;
            var belief = ranker.Rank(line.Evidence, parsed.GetValue(top));
            foreach (var remark in line.Remarks.Concat(belief.Remarks)) seat.Talk.Say($"{item.Id}: {remark}");
            if (parsed.GetValue(json)) seat.Talk.Json(writer => NameResultWriter.WriteKeys(writer, item.Id, belief));
            else seat.Talk.Line(NameCommandSentences.Line(item.Id, belief));
        }

        return refused == 0 ? ExitCodes.Done : done == 0 ? ExitCodes.Refused : ExitCodes.Look;
    }

    private static int Refused(Seat seat, IReadOnlyList<Fault> faults)
    {
        seat.Talk.SayFaults(faults);
        return ExitCodes.Refused;
    }
}
