namespace Lidoff.Catalogue.Tests;

/// <summary>A folder for one test, gone after it.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("lidoff-catalogue-").FullName;

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
