namespace Lidoff.Weighing.Beliefs;

/// <summary>Variables that hang together by factors, and those factors, in ordinal order of ids; places stand for ids inside.</summary>
internal sealed class JointComponent
{
    private JointComponent(Variable[] variables, ISharedFactor[] factors)
    {
        Variables = variables;
        Factors = factors;
        var place = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < variables.Length; i++) place[variables[i].Id] = i;
        Scopes = [.. factors.Select(f => f.Variables.Select(v => place[v]).ToArray())];
    }

    internal Variable[] Variables { get; }

    internal ISharedFactor[] Factors { get; }

    /// <summary>For each factor the places of its variables, in its own order.</summary>
    internal int[][] Scopes { get; }

    /// <summary>Number of joint states, held down to what a double counts exactly.</summary>
    internal double JointStates => Variables.Aggregate(1.0, (n, v) => Math.Min(1e15, n * v.States.Count));

    /// <summary>True when factors and variables form a tree, so that messages give the exact answer.</summary>
    internal bool IsTree => Scopes.Sum(s => s.Length) == Variables.Length + Factors.Length - 1;

    internal static IEnumerable<JointComponent> Split(Variable[] variables, ISharedFactor[] factors)
    {
        var root = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var v in variables) root[v.Id] = v.Id;
        string Root(string id)
        {
            while (root[id] != id) id = root[id] = root[root[id]];
            return id;
        }

        foreach (var f in factors)
        {
            foreach (var v in f.Variables.Skip(1)) root[Root(v)] = Root(f.Variables[0]);
        }
        return variables.GroupBy(v => Root(v.Id), StringComparer.Ordinal)
            .Select(g => new JointComponent([.. g], [.. factors.Where(f => f.Variables.Count > 0 && Root(f.Variables[0]) == g.Key)]));
    }
}
