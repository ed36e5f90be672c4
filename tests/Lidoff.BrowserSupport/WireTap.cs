using System.Net;
using System.Net.Sockets;

namespace Lidoff.BrowserSupport;

/// <summary>
/// Stands between browser and bench and counts every byte that passes: what a page costs on the wire, the live connection's own
/// compression included, which no figure inside the browser tells.
/// </summary>
public sealed class WireTap : IAsyncDisposable
{
    private readonly TcpListener listener = new(IPAddress.Loopback, 0);
    private readonly CancellationTokenSource stop = new();
    private readonly int to;
    private readonly Task accepting;
    private long toBrowser;

    /// <summary>Listens on a free port and passes on to <paramref name="port"/>.</summary>
    public WireTap(int port)
    {
        to = port;
        listener.Start();
        accepting = Accept();
    }

    /// <summary>The port to go through.</summary>
    public int Port => ((IPEndPoint)listener.LocalEndpoint).Port;

    /// <summary>Bytes from the bench to the browser so far.</summary>
    public long ToBrowser => Interlocked.Read(ref toBrowser);

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await stop.CancelAsync().ConfigureAwait(false);
        listener.Stop();
        await accepting.ConfigureAwait(false);
        stop.Dispose();
    }

    private async Task Accept()
    {
        List<Task> passing = [];
        try
        {
            while (true) passing.Add(Pass(await listener.AcceptTcpClientAsync(stop.Token).ConfigureAwait(false)));
        }
        catch (Exception end) when (end is OperationCanceledException or SocketException or ObjectDisposedException)
        {
        }

        await Task.WhenAll(passing).ConfigureAwait(false);
    }

    private async Task Pass(TcpClient browser)
    {
        using var bench = new TcpClient();
        using (browser)
        {
            try
            {
                await bench.ConnectAsync(IPAddress.Loopback, to, stop.Token).ConfigureAwait(false);
                var (near, far) = (browser.GetStream(), bench.GetStream());
                await Task.WhenAny(Copy(near, far, _ => { }), Copy(far, near, n => Interlocked.Add(ref toBrowser, n))).ConfigureAwait(false);
            }
            catch (Exception end) when (end is OperationCanceledException or SocketException)
            {
            }
        }
    }

    private async Task Copy(NetworkStream from, NetworkStream into, Action<int> passed)
    {
        var buffer = new byte[1 << 16];
        try
        {
            while (await from.ReadAsync(buffer, stop.Token).ConfigureAwait(false) is > 0 and var n)
            {
                passed(n);
                await into.WriteAsync(buffer.AsMemory(0, n), stop.Token).ConfigureAwait(false);
            }
        }
        catch (Exception end) when (end is OperationCanceledException or IOException or ObjectDisposedException)
        {
        }
    }
}
