namespace Lidoff.TestSupport;

/// <summary>A clock that starts at a fixed moment and moves on one second whenever it is asked.</summary>
public sealed class SteppingClock : TimeProvider
{
    private long seconds;

    /// <inheritdoc/>
    public override DateTimeOffset GetUtcNow() => new DateTimeOffset(2026, 3, 2, 10, 0, 0, TimeSpan.Zero).AddSeconds(Interlocked.Increment(ref seconds));
}
