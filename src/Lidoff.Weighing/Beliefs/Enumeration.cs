namespace Lidoff.Weighing.Beliefs;

/// <summary>Counts out every joint state of a small component.</summary>
internal static class Enumeration
{
    internal static IEnumerable<JointBelief> Run(JointComponent component)
    {
        var variables = component.Variables;
        var marginals = variables.Select(v => Impossible(v.States.Count)).ToArray();
        var states = new int[variables.Length];
        do
        {
            var log = 0.0;
            for (var v = 0; v < states.Length; v++) log += variables[v].LogWeights[states[v]];
            if (double.IsNegativeInfinity(log)) continue;
            for (var f = 0; f < component.Factors.Length; f++) log += component.Factors[f].LogLikelihood([.. component.Scopes[f].Select(v => states[v])]);
            for (var v = 0; v < states.Length; v++) marginals[v][states[v]] = LogSpace.Add(marginals[v][states[v]], log);
        }
        while (Next(states, variables));
        return variables.Select((v, i) => new JointBelief(v.Id, v.States, LogSpace.Shares(marginals[i]), true));
    }

    /// <summary>Counts one on; false after the last.</summary>
    private static bool Next(int[] states, Variable[] variables)
    {
        for (var v = states.Length - 1; v >= 0; v--)
        {
            if (++states[v] < variables[v].States.Count) return true;
            states[v] = 0;
        }
        return false;
    }

    private static double[] Impossible(int count)
    {
        var logs = new double[count];
        Array.Fill(logs, double.NegativeInfinity);
        return logs;
    }
}
