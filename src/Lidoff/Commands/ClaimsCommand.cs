using System.CommandLine;
using System.Text.Json;
using Lidoff.Telling.Claims;

namespace Lidoff.Commands;

/// <summary><c>lidoff claims DOSSIER --json</c>: every claim as it reads today, and how it stands against what was published.</summary>
public sealed class ClaimsCommand : ILidoffCommand
{
    /// <inheritdoc/>
    public string Says => "Lists the claims with live values, grades, and whether they still say what was published.";

    /// <inheritdoc/>
    public string Example => "claims band --json";

    /// <inheritdoc/>
    public void Build(Command command, Seat seat)
    {
        var dossier = new Argument<string>("DOSSIER") { Description = "Short name of the dossier." };
        var json = new Option<bool>("--json") { Description = "One JSON object a claim on standard output." };
        command.Arguments.Add(dossier);
        command.Options.Add(json);
        command.SetAction(parsed => Desk.Within(seat, parsed, workspace =>
        {
            var open = Desk.Dossier(seat, workspace, parsed.GetValue(dossier)!);
            if (!open.Ok) return Desk.Refuse(seat, open.Faults);
            var claims = open.Value.Claims;
            foreach (var claim in claims) Tell(seat, claim, parsed.GetValue(json));
            return claims.All(claim => claim.State == ClaimState.Same) ? ExitCodes.Done : ExitCodes.Look;
        }));
    }

    private static void Tell(Seat seat, Claim claim, bool json)
    {
        if (json) seat.Talk.Json(writer => Write(writer, claim));
        else seat.Talk.Line($"{claim.Name} [{claim.Grade}, {Word(claim.State)}{(claim.SupportErased ? ", support erased" : "")}] {claim.Text}");
    }

    private static void Write(Utf8JsonWriter writer, Claim claim)
    {
        writer.WriteString("claim", claim.Name);
        writer.WriteString("text", claim.Text);
        writer.WriteStartObject("values");
        foreach (var value in claim.Values)
        {
            if (value.Lost)
            {
                writer.WriteNull(value.Reference);
                continue;
            }

            writer.WriteStartObject(value.Reference);
            if (value.Value is { } number)
            {
                writer.WriteNumber("value", number);
                writer.WriteString("unit", value.Unit);
                writer.WriteNumber("u", value.U ?? 0);
                writer.WriteStartArray("interval90");
                writer.WriteNumberValue(value.Low ?? number);
                writer.WriteNumberValue(value.High ?? number);
                writer.WriteEndArray();
            }
            else
            {
                writer.WriteString("name", value.Text);
            }

            writer.WriteString("grade", value.Grade.ToString());
            writer.WriteEndObject();
        }

        writer.WriteEndObject();
        writer.WriteString("grade", claim.Grade.ToString());
        writer.WriteString("state", Word(claim.State));
        writer.WriteStartArray("rests_on");
        foreach (var id in claim.RestsOn) writer.WriteStringValue(id.Hex);
        writer.WriteEndArray();
    }

    private static string Word(ClaimState state) => state == ClaimState.ProgramChanged ? "program changed" : state.ToString().ToLowerInvariant();
}
