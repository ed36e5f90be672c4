namespace Lidoff.Evidence.Working;

/// <summary>How far a job is. <paramref name="Total"/> is 0 while the amount is unknown; <paramref name="Words"/> say what is being done.</summary>
public sealed record JobProgress(long Done, long Total, string Words)
{
    /// <summary>Nothing said yet.</summary>
    public static JobProgress None { get; } = new(0, 0, "");

    /// <summary>Share done in 0..1, null while the amount is unknown.</summary>
    public double? Share => Total > 0 ? Math.Clamp((double)Done / Total, 0, 1) : null;
}
