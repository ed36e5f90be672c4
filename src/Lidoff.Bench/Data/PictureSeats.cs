using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Pictures;

namespace Lidoff.Bench.Data;

/// <summary>
/// Who may decode a picture just now: two at a time, and of large pictures one, so that a page of them, or many pages at once, cannot fill
/// the memory. Whatever decodes in the workbench takes a seat here; nobody takes a second one while sitting.
/// </summary>
public sealed class PictureSeats : IDisposable
{
    // From here on a picture is decoded alone: whoever looks at it sees it sooner, and one decoder's buffers are enough.
    private const long Large = 24_000_000;

    private readonly SemaphoreSlim seats = new(2);
    private readonly SemaphoreSlim alone = new(1);

    /// <summary>True for a picture that is decoded alone.</summary>
    public static bool IsLarge(PictureHeader header) => (long)Guard.NotNull(header).Width * header.Height > Large;

    /// <summary>Does work on another thread when there is a seat for it.</summary>
    /// <param name="large">Whether it decodes a large picture.</param>
    /// <param name="work">The work.</param>
    /// <param name="stop">Stops waiting; work that has begun is stopped by its own means.</param>
    public async Task<T> Take<T>(bool large, Func<T> work, CancellationToken stop)
    {
        var seat = large ? alone : seats;
        await seat.WaitAsync(stop).ConfigureAwait(false);
        try
        {
            return await Task.Run(work, CancellationToken.None).ConfigureAwait(false);
        }
        finally
        {
            seat.Release();
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        seats.Dispose();
        alone.Dispose();
    }
}
