namespace Lidoff.Opening.Resuming;

/// <summary>What the resume card says.</summary>
public static class ResumeSentences
{
    /// <summary>How the cell of a specimen stands.</summary>
    public static string Cell(string specimen, bool? connected, bool? damaged, string since = "")
    {
        var whose = specimen.Length > 0 ? $"The cell of specimen {specimen}" : "The cell";
        var stands = connected switch
        {
            true => $"{whose} was connected when it was last noted.",
            false => $"{whose} was disconnected when it was last noted.",
            null when since.Length > 0 => $"Nobody noted how {char.ToLowerInvariant(whose[0])}{whose[1..]} stands since \"{since}\": take it as connected until you have looked.",
            null => $"Nobody noted whether {char.ToLowerInvariant(whose[0])}{whose[1..]} is connected: take it as connected until you have looked.",
        };
        return damaged == true ? stands + " It was noted as damaged: read the caution before you touch it." : stands;
    }

    /// <summary>What the next irreversible act costs, and what is still to be recorded before it.</summary>
    public static string Irreversible(PlannedStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        var missing = step.NotRecorded.ToList();
        var first = missing.Count > 0 ? $" Record first: {string.Join("; ", missing)}." : step.First.Count > 0 ? " What was to be recorded first is recorded." : "";
        return $"{step.Plan.Plan}, {step.Plan.Does}: destroys {step.Plan.Destroys}.{first}";
    }
}
