using System.Globalization;
using System.Text;

namespace Lidoff;

/// <summary>What happens when the fault is ours: a report file with what a maintainer needs and nothing of the dossier, exit 4.</summary>
public static class FaultReport
{
    /// <summary>Writes the report beside the workspace (or, where that fails, says it on stderr) and gives exit code 4.</summary>
    public static int Write(Exception failure, IReadOnlyList<string> arguments, Seat seat)
    {
        var text = new StringBuilder()
            .Append("Lidoff ").Append(typeof(FaultReport).Assembly.GetName().Version?.ToString(3)).Append('\n')
            .Append("command: ").Append(arguments.Count > 0 ? arguments[0] : "").Append('\n')
            .Append("at: ").Append(seat.Clock.GetUtcNow().ToString("O", CultureInfo.InvariantCulture)).Append("\n\n")
            .Append(failure).Append('\n').ToString();
        try
        {
            var folder = Path.Combine(seat.DefaultWorkspace, "faults");
            Directory.CreateDirectory(folder);
            var path = Path.Combine(folder, "fault-" + seat.Clock.GetUtcNow().ToString("yyyyMMdd-HHmmss-fff", CultureInfo.InvariantCulture) + ".txt");
            File.WriteAllText(path, text);
            seat.Talk.Say($"Lidoff made a mistake: {failure.Message} Nothing that was acknowledged is lost. The report lies at {path}.");
        }
        catch (Exception second) when (second is IOException or UnauthorizedAccessException)
        {
            seat.Talk.Say($"Lidoff made a mistake and could not write its report ({second.Message}). Nothing that was acknowledged is lost.\n{text}");
        }

        return ExitCodes.OurFault;
    }
}
