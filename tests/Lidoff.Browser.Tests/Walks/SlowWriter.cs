namespace Lidoff.Browser.Tests.Walks;

/// <summary>Writes a file as a slow instrument does: half of it at once, then byte by byte; the rest when disposed.</summary>
internal sealed class SlowWriter : IDisposable
{
    private readonly ManualResetEventSlim rest = new();
    private readonly Thread writing;

    private SlowWriter(string path, byte[] bytes) => writing = new(() =>
    {
        using var file = new FileStream(path, FileMode.CreateNew, FileAccess.Write, FileShare.ReadWrite, 0);
        var at = bytes.Length / 2;
        file.Write(bytes, 0, at);
        // A thread of its own: the file must never rest for a second, however busy the machine is.
        while (!rest.Wait(30) && at < bytes.Length - 1) file.WriteByte(bytes[at++]);
        file.Write(bytes, at, bytes.Length - at);
    });

    public static SlowWriter Begin(string path, byte[] bytes)
    {
        var writer = new SlowWriter(path, bytes);
        writer.writing.Start();
        return writer;
    }

    public void Dispose()
    {
        rest.Set();
        writing.Join();
        rest.Dispose();
    }
}
