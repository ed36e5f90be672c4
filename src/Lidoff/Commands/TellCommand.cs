using System.CommandLine;
using Lidoff.Evidence.Entries;
using Lidoff.Telling.Dossiers;
using Lidoff.Telling;
using Lidoff.Telling.Claims;
using Lidoff.Telling.Kinds;
using Lidoff.Telling.Reporting;
using Lidoff.Talking;

namespace Lidoff.Commands;

/// <summary><c>lidoff tell DOSSIER --to DIR</c>: the report and its parts.</summary>
public sealed class TellCommand : ILidoffCommand
{
    /// <inheritdoc/>
    public string Says => "Writes the report: every figure in it leads back to what it rests on.";

    /// <inheritdoc/>
    public string Example => "tell band --to report --as html,md";

    /// <inheritdoc/>
    public void Build(Command command, Seat seat)
    {
        var dossier = new Argument<string>("DOSSIER") { Description = "Short name of the dossier." };
        var to = new Option<string>("--to") { Description = "Folder of the report.", Required = true, HelpName = "DIR" };
        var forms = new Option<string>("--as") { Description = "Forms, with commas between: html, md, json (default html,json).", DefaultValueFactory = _ => "html,json" };
        var publish = new Option<bool>("--publish") { Description = "Remembers what every claim says now, so that later changes are flagged." };
        command.Arguments.Add(dossier);
        command.Options.Add(to);
        command.Options.Add(forms);
        command.Options.Add(publish);
        command.SetAction(parsed => Run(seat, parsed, parsed.GetValue(dossier)!, seat.PathOf(parsed.GetValue(to)!), parsed.GetValue(forms)!, parsed.GetValue(publish)));
    }

    private static int Run(Seat seat, ParseResult parsed, string dossier, string folder, string asked, bool publish)
    {
        var forms = asked.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Distinct(StringComparer.Ordinal).ToList();
        var unknown = forms.Where(form => !ReportFolder.Forms.Contains(form)).Select(TellingSentences.UnknownForm).ToList();
        if (unknown.Count > 0)
        {
            seat.Talk.SayFaults(unknown);
            return ExitCodes.Usage;
        }

        return Desk.Within(seat, parsed, workspace =>
        {
            var open = Desk.Dossier(seat, workspace, dossier);
            return open.Ok ? Write(seat, open.Value, folder, forms, publish) : Desk.Refuse(seat, open.Faults);
        });
    }

    private static int Write(Seat seat, OpenDossier dossier, string folder, IReadOnlyList<string> forms, bool publish)
    {
        var written = ReportFolder.Write(dossier, folder, forms, seat.Talk.Say);
        if (!written.TryValue(out var files)) return Desk.Refuse(seat, written.Faults);
        seat.Talk.Say($"Written to {folder}: {string.Join(", ", files)}");
        var claims = dossier.Claims;
        foreach (var stale in claims.Where(claim => claim.State != ClaimState.Same)) seat.Talk.Say($"{stale.Name} is not what was published or has lost its support: {stale.Text}");
        if (publish && dossier.Append([Draft(dossier.Session.Name, claims)]) is { Ok: false } failed) return Desk.Refuse(seat, failed.Faults);
        return claims.All(claim => claim.State == ClaimState.Same) ? ExitCodes.Done : ExitCodes.Look;
    }

    private static EntryDraft Draft(string dossier, IReadOnlyList<Claim> claims) =>
        EntryDraft.Of(dossier, new PublishKind(), json => PublishKind.WriteKeys(json, [.. claims.Select(claim => ClaimBook.Baseline(claim, OpenDossier.Program))]));
}
