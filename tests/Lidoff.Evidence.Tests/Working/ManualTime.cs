namespace Lidoff.Evidence.Tests.Working;

/// <summary>Time that stands until it is moved.</summary>
public sealed class ManualTime : TimeProvider
{
    private long ticks = new DateTimeOffset(2026, 3, 2, 10, 15, 0, TimeSpan.Zero).Ticks;

    public override long TimestampFrequency => TimeSpan.TicksPerSecond;

    public void Move(TimeSpan by) => Interlocked.Add(ref ticks, by.Ticks);

    public override DateTimeOffset GetUtcNow() => new(Interlocked.Read(ref ticks), TimeSpan.Zero);

    public override long GetTimestamp() => Interlocked.Read(ref ticks);
}
