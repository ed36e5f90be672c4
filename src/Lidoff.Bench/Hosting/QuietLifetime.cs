using Microsoft.Extensions.Hosting;

namespace Lidoff.Bench.Hosting;

/// <summary>The program decides when to stop; the web server does not listen for Ctrl+C on its own.</summary>
internal sealed class QuietLifetime : IHostLifetime
{
    public Task WaitForStartAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;
}
