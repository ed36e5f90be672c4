namespace Lidoff.Seeing.Tests.Pictures;

/// <summary>A folder of its own that goes away with the test.</summary>
public sealed class TemporaryFolder : IDisposable
{
    private readonly string root = Directory.CreateTempSubdirectory("lidoff-seeing-").FullName;

    public string Root => root;

    public string File(string name) => Path.Combine(root, name);

    public void Dispose() => Directory.Delete(root, recursive: true);
}
