using System.CommandLine;
using System.Globalization;
using Lidoff.Telling.Claims;
using Lidoff.Telling.Dossiers;
using Lidoff.Weighing.Moves;

namespace Lidoff.Commands;

/// <summary><c>lidoff moves DOSSIER [--for QUESTION] --json</c>: what to measure next.</summary>
public sealed class MovesCommand : ILidoffCommand
{
    /// <inheritdoc/>
    public string Says => "Lists what to do next: what it tells, in how many minutes, at what risk.";

    /// <inheritdoc/>
    public string Example => "moves band --for Q1 --json";

    /// <inheritdoc/>
    public void Build(Command command, Seat seat)
    {
        var dossier = new Argument<string>("DOSSIER") { Description = "Short name of the dossier." };
        var question = new Option<string?>("--for") { Description = "Only for this question: its name (Q1), its text, or a text that a move gives (\"What is U3?\")." };
        var json = new Option<bool>("--json") { Description = "One JSON object a move on standard output." };
        command.Arguments.Add(dossier);
        command.Options.Add(question);
        command.Options.Add(json);
        command.SetAction(parsed => Desk.Within(seat, parsed, workspace =>
        {
            var open = Desk.Dossier(seat, workspace, parsed.GetValue(dossier)!);
            if (!open.Ok) return Desk.Refuse(seat, open.Faults);
            var moves = Moves(open.Value, parsed.GetValue(question));
            if (!moves.Ok) return Desk.Refuse(seat, moves.Faults);
            foreach (var move in moves.Value) Tell(seat, move, parsed.GetValue(json));
            return ExitCodes.Done;
        }));
    }

    private static Numbers.Failing.Outcome<Evidence.Entries.ValueList<NextMove>> Moves(OpenDossier open, string? question)
    {
        var claims = TiedClaims.Of(open.Claims);
        return question is null ? NextMoves.Of(open.Session.View, open.Model, claims) : NextMoves.For(open.Session.View, open.Model, question, claims);
    }

    private static void Tell(Seat seat, NextMove move, bool json)
    {
        if (!json)
        {
            var bits = move.Bits is { } told ? string.Create(CultureInfo.InvariantCulture, $"{told:0.00} bits, ") : "";
            seat.Talk.Line(string.Create(CultureInfo.InvariantCulture, $"{move.Question} {move.Move} ({bits}{move.Minutes:0.#} min, risk: {MoveRisks.Word(move.Risk)}). {move.Why}"));
            return;
        }

        seat.Talk.Json(writer =>
        {
            writer.WriteString("question", move.Question);
            writer.WriteString("move", move.Move);
            if (move.Bits is { } bits) writer.WriteNumber("bits", bits);
            else writer.WriteNull("bits");
            writer.WriteNumber("minutes", move.Minutes);
            writer.WriteString("risk", MoveRisks.Word(move.Risk));
            writer.WriteString("why", move.Why);
        });
    }
}
