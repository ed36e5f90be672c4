namespace Lidoff.Weighing.Beliefs;

/// <summary>
/// Passes messages between variables and factors in rounds; in each round every factor speaks once, in ordinal order. What a variable
/// tells a factor leaves out what that factor had told it, and what a factor tells a variable leaves out what that variable had said:
/// a touch that helped name a part does not come back as news through the part's pin-out. On a tree as many rounds as there are
/// factors give the exact answer; with loops the rounds are cut off at a fixed number and the belief says that it is not exact.
/// </summary>
internal static class MessagePassing
{
    /// <summary>Rounds on a component with loops.</summary>
    private const int LoopRounds = 60;

    internal static IEnumerable<JointBelief> Run(JointComponent component)
    {
        var heard = component.Scopes.Select(s => s.Select(v => new double[component.Variables[v].States.Count]).ToArray()).ToArray();
        var of = Speakers(component);
        // A message crosses one factor a round at least, so a tree is settled after as many rounds as it has factors.
        var rounds = component.IsTree ? component.Factors.Length : LoopRounds;
        for (var round = 0; round < rounds; round++)
        {
            for (var f = 0; f < component.Factors.Length; f++) Speak(component, f, heard, of);
        }
        return component.Variables.Select((v, i) => new JointBelief(v.Id, v.States, LogSpace.Shares(Said(component, i, -1, heard, of)), component.IsTree));
    }

    /// <summary>For each variable, which factor hears it at which place of its scope.</summary>
    private static List<(int Factor, int Slot)>[] Speakers(JointComponent component)
    {
        var of = component.Variables.Select(_ => new List<(int, int)>()).ToArray();
        for (var f = 0; f < component.Scopes.Length; f++)
        {
            for (var slot = 0; slot < component.Scopes[f].Length; slot++) of[component.Scopes[f][slot]].Add((f, slot));
        }
        return of;
    }

    /// <summary>Local evidence of a variable and what all factors but one told it.</summary>
    private static double[] Said(JointComponent component, int variable, int leaveOut, double[][][] heard, List<(int Factor, int Slot)>[] of)
    {
        var logs = component.Variables[variable].LogWeights.ToArray();
        foreach (var (factor, slot) in of[variable])
        {
            if (factor == leaveOut) continue;
            for (var s = 0; s < logs.Length; s++) logs[s] += heard[factor][slot][s];
        }
        return logs;
    }

    /// <summary>One factor tells each of its variables what follows from what the others said.</summary>
    private static void Speak(JointComponent component, int factor, double[][][] heard, List<(int Factor, int Slot)>[] of)
    {
        var scope = component.Scopes[factor];
        var said = scope.Select(v => Said(component, v, factor, heard, of)).ToArray();
        var told = said.Select(s => { var logs = new double[s.Length]; Array.Fill(logs, double.NegativeInfinity); return logs; }).ToArray();
        var states = new int[scope.Length];
        for (var more = true; more; more = Next(states, said))
        {
            var log = component.Factors[factor].LogLikelihood(states);
            for (var slot = 0; slot < scope.Length; slot++)
            {
                var others = log;
                for (var o = 0; o < scope.Length; o++) others += o == slot ? 0 : said[o][states[o]];
                told[slot][states[slot]] = LogSpace.Add(told[slot][states[slot]], others);
            }
        }
        foreach (var logs in told) LogSpace.Normalise(logs);
        heard[factor] = told;
    }

    private static bool Next(int[] states, double[][] said)
    {
        for (var v = states.Length - 1; v >= 0; v--)
        {
            if (++states[v] < said[v].Length) return true;
            states[v] = 0;
        }
        return false;
    }
}
