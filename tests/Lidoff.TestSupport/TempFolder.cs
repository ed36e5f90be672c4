namespace Lidoff.TestSupport;

/// <summary>A folder of its own for one test, removed afterwards.</summary>
public sealed class TempFolder : IDisposable
{
    /// <summary>Makes the folder.</summary>
    public TempFolder() => Path = Directory.CreateTempSubdirectory("lidoff-test-").FullName;

    /// <summary>Where it is.</summary>
    public string Path { get; }

    /// <summary>A path inside it.</summary>
    public string this[string name] => System.IO.Path.Combine(Path, name);

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(Path, recursive: true);
}
