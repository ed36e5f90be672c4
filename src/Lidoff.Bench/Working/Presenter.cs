namespace Lidoff.Bench.Working;

/// <summary>
/// What was last shown of each dossier, whichever window showed it: a presenter window on a second screen follows it. Kept in memory
/// only. Safe from any thread.
/// </summary>
public sealed class Presenter
{
    private readonly Lock gate = new();
    private readonly Dictionary<string, Presented> shown = new(StringComparer.Ordinal);

    /// <summary>Called on the shower's thread with the dossier when what is shown of it changed.</summary>
    public event Action<string>? Moved;

    /// <summary>What was last shown of a dossier; null when nothing was.</summary>
    public Presented? Of(string dossier)
    {
        lock (gate) return shown.GetValueOrDefault(dossier);
    }

    /// <summary>Shows; the same again tells nobody.</summary>
    public void Show(string dossier, Presented now)
    {
        lock (gate)
        {
            if (shown.TryGetValue(dossier, out var before) && before == now) return;
            shown[dossier] = now;
        }

        Moved?.Invoke(dossier);
    }
}
