using Lidoff.Benchmarks;

// bench/run [NAME…]: measures the targets of the issues, each beside its baseline, and prints one table.
var root = AppContext.BaseDirectory;
while (!File.Exists(Path.Combine(root, "Lidoff.slnx"))) root = Path.GetDirectoryName(root) ?? throw new InvalidOperationException("run inside the repository");
var scratch = Path.Combine(Path.GetTempPath(), "lidoff-bench");
Directory.CreateDirectory(scratch);
var place = new BenchPlace(root, Path.Combine(root, "artifacts/lidoff/lidoff"), Path.Combine(root, "artifacts/hello/lidoff-hello"), scratch);
var all = typeof(IBenchmark).Assembly.GetTypes()
    .Where(type => type is { IsClass: true, IsAbstract: false } && typeof(IBenchmark).IsAssignableFrom(type))
    .Select(type => (IBenchmark)Activator.CreateInstance(type)!)
    .OrderBy(benchmark => benchmark.Name, StringComparer.Ordinal).ToList();
Console.WriteLine("| what | measured | baseline | ratio | target | met |\n|---|---|---|--:|---|---|");
var missed = 0;
foreach (var benchmark in all.Where(each => args.Length == 0 || args.Contains(each.Name)))
{
    foreach (var row in benchmark.Run(place))
    {
        Console.WriteLine($"| {row.What} | {row.Measured} | {row.Baseline} | {row.Ratio} | {row.Target} | {(row.Met ? "yes" : "NO")} |");
        if (!row.Met) missed++;
    }
}

return missed == 0 ? 0 : 1;
