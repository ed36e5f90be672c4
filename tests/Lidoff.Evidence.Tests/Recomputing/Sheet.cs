using Lidoff.Evidence.Recomputing;

namespace Lidoff.Evidence.Tests.Recomputing;

/// <summary>
/// A small graph with everything a real one has: readings that round to the same value, a group that reads a set of keys, and
/// a top whose reads hang on what it read before. <see cref="Plain"/> says the same in four lines without any graph.
/// </summary>
public sealed class Sheet
{
    public InputTable<int, int> Readings { get; } = new("readings", v => "v" + v);

    public RecomputeGraph Graph { get; } = new();

    public List<string> Ran { get; } = [];

    public Halved Half { get; }

    public Grouped Group { get; }

    public Topmost Top { get; }

    public Sheet()
    {
        Half = new(this);
        Group = new(this);
        Top = new(this);
    }

    public int Answer => Graph.Get(Top, "all");

    public static int Plain(IReadOnlyDictionary<int, int> readings)
    {
        int Group(int g) => readings.Where(r => r.Key % 3 == g).Sum(r => r.Value / 2);
        return Group(0) % 2 == 0 ? Group(1) : 1000 + Group(2);
    }

    public sealed class Halved(Sheet sheet) : Step<int, int>
    {
        public override string Name => "half";

        public override int Compute(int key, IReads reads)
        {
            sheet.Ran.Add("half " + key);
            return reads.Read(sheet.Readings, key) / 2;
        }
    }

    public sealed class Grouped(Sheet sheet) : Step<int, int>
    {
        public override string Name => "group";

        public override int Compute(int key, IReads reads)
        {
            sheet.Ran.Add("group " + key);
            return reads.Keys(sheet.Readings).Where(k => k % 3 == key).Sum(k => reads.Read(sheet.Half, k));
        }
    }

    public sealed class Topmost(Sheet sheet) : Step<string, int>
    {
        public override string Name => "top";

        public override int Compute(string key, IReads reads)
        {
            sheet.Ran.Add("top");
            return reads.Read(sheet.Group, 0) % 2 == 0 ? reads.Read(sheet.Group, 1) : 1000 + reads.Read(sheet.Group, 2);
        }
    }
}
