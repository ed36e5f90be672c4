namespace Lidoff.Benchmarks;

/// <summary>Where the benchmark runs: the repository, the built program, the hello-world baseline, and a folder to throw away.</summary>
public sealed record BenchPlace(string Root, string Program, string Hello, string Scratch)
{
    /// <summary>A fresh empty folder of its own.</summary>
    public string Fresh(string name)
    {
        var folder = Path.Combine(Scratch, name);
        if (Directory.Exists(folder)) Directory.Delete(folder, recursive: true);
        Directory.CreateDirectory(folder);
        return folder;
    }
}
