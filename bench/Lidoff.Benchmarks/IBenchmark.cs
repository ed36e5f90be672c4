namespace Lidoff.Benchmarks;

/// <summary>One target of an issue, measured in one run beside a named baseline, so that a slow machine slows both.</summary>
public interface IBenchmark
{
    /// <summary>Short name, to run it alone.</summary>
    string Name { get; }

    /// <summary>Measures and gives the rows to print.</summary>
    IReadOnlyList<Row> Run(BenchPlace place);
}
